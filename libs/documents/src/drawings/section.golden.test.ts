import { describe, expect, it } from 'vitest';
import {
  alternateSystem,
  boltedSystem,
  crowdedCover,
  glassSystem,
  linedSystem,
  pilotSystem,
  screeningSystem,
  segmentSystem,
} from '../fixtures/sample-systems.js';
import { coverPlanOf } from './cover-plan.js';
import type { DrawingInput } from './drawing-model.js';
import { drawingModelOf } from './drawing-model-of.js';
import { sceneToSvg } from './scene-to-svg.js';
import { sectionOf } from './section.js';
import { thumbnailSvg } from './thumbnail.js';

/** One element a line, so that a change of a golden file can be read. */
const lines = (svg: string): string => `${svg.replaceAll('><', '>\n<')}\n`;

const section = (input: DrawingInput): string =>
  lines(sceneToSvg(sectionOf(drawingModelOf(input))!, { width: 912, height: 760 }));

const segmentQuickActingTwoLitres = (): string => section(segmentSystem());
const boltedNickelAlloyFiveLitres = (): string => section(boltedSystem());
const glassOneLitreBehindShield = (): string => section(glassSystem());
const linedClampedTenLitres = (): string => section(linedSystem());
const screeningTwelveMillilitres = (): string => section(screeningSystem());
const pilotFourHundredLitres = (): string => section(pilotSystem());
const steelAndGlassOnOneFrame = (): string => section(alternateSystem());

const coverOfSegmentVessel = (): string =>
  lines(
    sceneToSvg(coverPlanOf(drawingModelOf(segmentSystem()), 0)!, {
      width: 540,
      height: 420,
      callouts: 'none',
    }),
  );

const coverWithTwoCirclesOfPorts = (): string =>
  lines(
    sceneToSvg(coverPlanOf(drawingModelOf(crowdedCover()), 0, { labels: 'names' })!, {
      width: 300,
      height: 300,
      callouts: 'none',
    }),
  );

const thumbnailOfGlassVessel = (): string =>
  lines(thumbnailSvg(sectionOf(drawingModelOf(glassSystem()))!, { width: 96, height: 140 }));

describe('golden drawings', () => {
  it.each([
    ['segment-2-l', segmentQuickActingTwoLitres],
    ['bolted-5-l', boltedNickelAlloyFiveLitres],
    ['glass-1-l', glassOneLitreBehindShield],
    ['lined-10-l', linedClampedTenLitres],
    ['screening-12-ml', screeningTwelveMillilitres],
    ['pilot-400-l', pilotFourHundredLitres],
    ['steel-and-glass', steelAndGlassOnOneFrame],
    ['cover-plan', coverOfSegmentVessel],
    ['cover-plan-crowded', coverWithTwoCirclesOfPorts],
    ['thumbnail-glass', thumbnailOfGlassVessel],
  ])('%s', async (name, draw) => {
    await expect(draw()).toMatchFileSnapshot(`golden/${name}.svg`);
  });
});
