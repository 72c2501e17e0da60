import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bySlot, portRing, sampleItem } from '../fixtures/sample-items.js';
import {
  bolts,
  coil,
  coupling,
  cover,
  disc,
  drive,
  electricLift,
  frame,
  gas,
  gauge,
  heater,
  oRing,
  segment,
  shaft,
  stirrer,
  vent,
  vessel,
  well,
} from '../fixtures/sample-parts.js';
import { arrangeSheet } from './arrange-sheet.js';
import type { Point } from './contour.js';
import type { DrawingInput } from './drawing-model.js';
import { drawingModelOf } from './drawing-model-of.js';
import { sceneToSvg } from './scene-to-svg.js';
import { sectionOf } from './section.js';

const impellers = [
  'disc turbine',
  'pitched blade turbine',
  'paddle',
  'propeller',
  'anchor',
  'double helical ribbon',
  'hollow shaft turbine',
  'magnetic bar',
] as const;

const ends = [
  'flat',
  'torispherical DIN 28011',
  'torispherical DIN 28013',
  '2:1 ellipsoidal',
  'hemispherical',
] as const;

const arbitrarySystem = fc
  .record({
    diameter: fc.double({ min: 0.012, max: 1, noNaN: true }),
    slenderness: fc.double({ min: 0.6, max: 3.5, noNaN: true }),
    wall: fc.double({ min: 0.02, max: 0.3, noNaN: true }),
    rim: fc.double({ min: 1.2, max: 2.6, noNaN: true }),
    impeller: fc.constantFrom(...impellers),
    impellerShare: fc.double({ min: 0.2, max: 0.95, noNaN: true }),
    end: fc.constantFrom(...ends),
    construction: fc.constantFrom('metal', 'glass', 'lined'),
    jacket: fc.boolean(),
    bottomPort: fc.boolean(),
    closure: fc.constantFrom('bolted', 'segment'),
    heated: fc.boolean(),
    coiled: fc.boolean(),
    turns: fc.integer({ min: 1, max: 30 }),
    ports: fc.array(fc.integer({ min: 3, max: 60 }), { minLength: 0, maxLength: 14 }),
    torque: fc.double({ min: 0.05, max: 800, noNaN: true }),
    power: fc.double({ min: 20, max: 30000, noNaN: true }),
    stands: fc.boolean(),
    lifts: fc.boolean(),
    height: fc.double({ min: 0.05, max: 3, noNaN: true }),
    fill: fc.double({ min: -0.2, max: 1.4, noNaN: true }),
    count: fc.integer({ min: 1, max: 3 }),
  })
  .map((random): DrawingInput => {
    const { diameter: d, construction } = random;
    const size = {
      bore: 100,
      diameter: d,
      cylinder: d * random.slenderness,
      wall: d * random.wall,
      flange: d * (1 + 2 * random.wall) * random.rim,
      rim: d * 0.3,
    };
    const items = bySlot(
      vessel('Vessel', size, {
        construction,
        material: construction === 'glass' ? 'borosilicate glass 3.3' : '1.4404',
        carrier: construction === 'lined' ? '1.4571' : null,
        end: random.end,
        jacket: random.jacket ? { maxPressurePaGauge: 6e5, areaM2: 0.1, gapM: d * 0.08 } : null,
        bottomPortM: random.bottomPort ? d * 0.1 : null,
      }),
      ...(random.closure === 'bolted' ? [bolts(100, 8, d * 0.1)] : [segment(100)]),
      oRing(100, d * 1.12),
      cover(100, d * 0.3, portRing(d * 0.7, random.ports)),
      stirrer(random.impeller, d * random.impellerShare, { width: d * 0.1, shaft: d * 0.08 }),
      shaft(d, d * 0.08),
      coupling(random.torque, d * 0.08),
      disc(38, 0.003),
      vent(0.008),
      gas(0.003),
      well(0.003),
      gauge(0.003),
      ...(random.heated ? [heater(100, 1000)] : []),
      ...(random.coiled ? [coil(100, d * 0.07, { diameter: d * 0.76, turns: random.turns })] : []),
      ...(random.bottomPort
        ? [sampleItem('bottomValve', 'Ball valve', { kind: 'ball valve', diameterM: d * 0.1, material: 'x' })]
        : []),
    );
    const depth = size.cylinder + d / 4;
    const levels = { coldM: depth * random.fill, hotM: depth * random.fill * 1.1 };
    return {
      title: 'random',
      frame: bySlot(
        drive(random.power),
        ...(random.stands ? [frame(random.height, random.height * 2, 100)] : []),
        ...(random.lifts ? [electricLift(random.height)] : []),
      ),
      sets: Array.from({ length: random.count }, () => ({ items, levels })),
    };
  });

const frames = { width: 912, height: 760, callouts: 'columns' } as const;

const turn = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Whether two segments cross inside both of them. */
const cross = ([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): boolean =>
  turn(a, b, c) * turn(a, b, d) < -1e-9 && turn(c, d, a) * turn(c, d, b) < -1e-9;

const segments = (line: readonly Point[]): (readonly [Point, Point])[] =>
  line.slice(1).map((to, i) => [line[i]!, to]);

describe('any geometry', () => {
  it('gives numbers only, inside the frame, with leaders that do not cross', () => {
    fc.assert(
      fc.property(arbitrarySystem, (input) => {
        const scene = sectionOf(drawingModelOf(input))!;
        const svg = sceneToSvg(scene, frames);
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        const sheet = arrangeSheet(scene, frames);
        const { bounds } = scene;
        const corners: Point[] = [
          [bounds.left, bounds.top],
          [bounds.right, bounds.bottom],
        ];
        const [low, high] = corners.map(([x, y]) => [
          sheet.origin[0] + sheet.scale * x,
          sheet.origin[1] + sheet.scale * y,
        ]);
        for (const [at, limit] of [
          [low![0]!, frames.width],
          [low![1]!, frames.height],
          [high![0]!, frames.width],
          [high![1]!, frames.height],
        ] as const) {
          expect(at).toBeGreaterThanOrEqual(0);
          expect(at).toBeLessThanOrEqual(limit);
        }
        for (const [i, one] of sheet.callouts.entries()) {
          for (const point of one.line) {
            expect(point[0]).toBeGreaterThanOrEqual(0);
            expect(point[0]).toBeLessThanOrEqual(frames.width);
            expect(point[1]).toBeGreaterThanOrEqual(0);
            expect(point[1]).toBeLessThanOrEqual(frames.height);
          }
          for (const other of sheet.callouts.slice(i + 1))
            if (other.side === one.side)
              for (const a of segments(one.line))
                for (const b of segments(other.line)) expect(cross(a, b)).toBe(false);
        }
      }),
      { numRuns: 60, seed: 20261124 },
    );
  }, 60_000);
});
