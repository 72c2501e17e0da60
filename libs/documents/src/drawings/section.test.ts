import { parseSlotPath } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import { sampleSystems, segmentSystem } from '../fixtures/sample-systems.js';
import { drawingModelOf } from './drawing-model-of.js';
import { isoScale, sectionForPaper } from './iso-scale.js';
import { placeAnchors } from './place-anchors.js';
import { boundsOf } from './scene-bounds.js';
import { sceneToSvg } from './scene-to-svg.js';
import { sectionOf } from './section.js';

const sceneOf = (name: keyof typeof sampleSystems) => sectionOf(drawingModelOf(sampleSystems[name]()))!;

describe('section', () => {
  it('has nothing to show while no vessel is chosen', () => {
    expect(sectionOf(drawingModelOf({ title: 'empty', frame: {}, sets: [{ items: {} }] }))).toBeUndefined();
  });

  it('draws the vessel to scale: the inner wall stands at half the diameter, the bottom at its depth', () => {
    const scene = sceneOf('segment');
    const wall = scene.parts.filter(({ slot }) => slot === 'sets[0].vessel');
    const bounds = boundsOf(wall);
    // 110 mm bore, wall 10 mm, rim 168 mm; 192 mm cylinder, 2:1 end of 27.5 mm, wall 10 mm.
    expect(bounds.right).toBeCloseTo(84, 6);
    expect(bounds.left).toBeCloseTo(-84, 6);
    expect(bounds.bottom).toBeCloseTo(192 + 27.5 + 10, 6);
  });

  it('gives inner diameter, depth, stroke and height in millimetres', () => {
    expect(sceneOf('segment').dimensions.map(({ text }) => text)).toEqual([
      '219.5',
      'Ø 110',
      'stroke 300',
      '780',
    ]);
  });

  it.each(Object.keys(sampleSystems) as (keyof typeof sampleSystems)[])(
    'ties every drawn slot of %s to its part',
    (name) => {
      const scene = sceneOf(name);
      const drawn = new Set(scene.parts.flatMap(({ slot }) => (slot === null ? [] : [slot])));
      const anchored = placeAnchors(scene).map(({ path }) => path);
      const chosen = scene.slots.map(({ path }) => path).filter((path) => drawn.has(path));
      expect(anchored.toSorted()).toEqual(chosen.toSorted());
    },
  );

  it('leads from a set to its own side where two stand on one frame', () => {
    const anchors = placeAnchors(sceneOf('alternate'));
    for (const { path, side } of anchors) {
      const set = parseSlotPath(path)?.set;
      if (set !== undefined) expect(side).toBe(set === 0 ? 'left' : 'right');
    }
  });

  it('marks parts by state and names them for people who do not see them', () => {
    const svg = sceneToSvg(sceneOf('segment'), { width: 900, height: 700, href: (path) => `#${path}` });
    expect(svg).toContain('class="part is-fail" data-slot="sets[0].coil"');
    expect(svg).toMatch(/aria-label="\d+ Cooling: Coil, 4 turns, 118\s*% of duty, not met"/u);
  });

  it('lets no markup of a name through', () => {
    const system = segmentSystem();
    const svg = sceneToSvg(sectionOf(drawingModelOf({ ...system, title: '"><script>alert(1)</script>' }))!, {
      width: 900,
      height: 700,
    });
    expect(svg).not.toContain('<script');
  });

  it('takes the largest scale of ISO 5455 that fits, with a shorter stand where that helps', () => {
    const model = drawingModelOf(segmentSystem());
    const place = { width: 97, height: 172 };
    const { scene, denominator } = sectionForPaper(model, place)!;
    expect(denominator).toBe(5);
    expect((scene.bounds.bottom - scene.bounds.top) / denominator).toBeLessThan(place.height);
    expect(isoScale(sceneOf('pilot'), place)).toBeGreaterThanOrEqual(20);
  });
});
