import { arc, bothSides, box, chain, type Contour, mirrored, polyline } from './contour.js';
import type { HatchMaterial, Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { circle, cut, seen, seenBox, stroke } from './shape.js';

/** Top of the coupling, where the motor sits [mm]. */
export const couplingTop = (layout: SetLayout): number => layout.neckTop - 134 * layout.couplingScale;

const symmetric = (
  contour: Contour,
  material: HatchMaterial,
  turn: { turned?: boolean; close?: boolean; mirror?: boolean } = {},
): Shape[] => {
  const { mirror = false, turned = false, ...rest } = turn;
  return [
    cut(contour, material, { ...rest, turned }),
    cut(mirrored(contour), material, { ...rest, turned: mirror ? !turned : turned }),
  ];
};

const magnets = (layout: SetLayout, at: { inner: number; outer: number; first: 0 | 1 }): Shape[] => {
  const c = layout.couplingScale;
  return [0, 1, 2].flatMap((i) => {
    const y = layout.neckTop - (17 + 18.5 * i) * c;
    return bothSides(box([at.inner, y - 17.5 * c], [at.outer, y])).map((body) =>
      seen(body, i % 2 === at.first ? 'magnet' : 'counter magnet', 'fine'),
    );
  });
};

const bearings = (layout: SetLayout, housing: number): Shape[] => {
  const { shaftRadius, coverTop, neckTop, couplingScale: c } = layout;
  const height = neckTop - coverTop;
  const ball = (housing - shaftRadius) * 0.28;
  return [0.34, 0.84].flatMap((part) => {
    const y = coverTop + height * part;
    return [1, -1].flatMap((side) => [
      seenBox([side * shaftRadius, y - 6 * c], [side * housing, y + 6 * c]),
      circle([(side * (shaftRadius + housing)) / 2, y], ball, { line: 'fine' }),
    ]);
  });
};

const neck = (layout: SetLayout, bore: number): Contour => {
  const { neckRadius, coverTop, neckTop, couplingScale: c } = layout;
  const body = Math.min(25 * c, neckRadius * 0.9);
  const flange = neckTop + 10 * c;
  return polyline(
    [Math.min(bore, layout.shaftRadius * 2), coverTop],
    [neckRadius, coverTop],
    [neckRadius, coverTop - 12 * c],
    [body, coverTop - 16 * c],
    [body, flange + 5 * c],
    [Math.max(28 * c, body), flange],
    [49 * c, flange],
    [49 * c, neckTop],
    [bore, neckTop],
    [bore, coverTop - 12 * c],
    [Math.min(bore, layout.shaftRadius * 2), coverTop - 12 * c],
  );
};

const can = (layout: SetLayout): Contour => {
  const { neckTop, couplingScale: c } = layout;
  const top = neckTop - 73 * c;
  return chain(
    polyline([19 * c, neckTop], [21.2 * c, neckTop]),
    arc({ centre: [0, top], radius: [21.2 * c, 8 * c], from: 0, to: -90 }),
    arc({ centre: [0, top], radius: [19 * c, 6 * c], from: -90, to: 0 }),
  );
};

const connections = (layout: SetLayout): Shape[] => {
  const { neckTop, couplingScale: c } = layout;
  return [-14, -34].flatMap((y) => [
    seenBox([41 * c, neckTop + (y - 4) * c], [58 * c, neckTop + (y + 4) * c]),
    stroke('thin', polyline([41 * c, neckTop + y * c], [62 * c, neckTop + y * c])),
  ]);
};

/**
 * Magnetic coupling on its neck: bearings, can, inner and outer magnets, lantern, clamping hub.
 * Its inside is drawn in proportion to the rated torque.
 */
export const drawCoupling = (layout: SetLayout): Shape[] => {
  const { set, neckTop, shaftRadius, neckRadius, couplingScale: c } = layout;
  if (set.coupling === null || set.stirrer?.impeller === 'magnetic bar') return [];
  const wetted: HatchMaterial = set.coupling.metalFree ? 'polymer' : 'steel';
  const top = couplingTop(layout);
  const bore = Math.min(19 * c, neckRadius * 0.7);
  const y = (up: number): number => neckTop - up * c;
  const rotor = Math.max(12 * c, shaftRadius * 1.5);
  return [
    seen(box([-36 * c, neckTop], [36 * c, top + 8 * c]), 'sheet', 'none'),
    seen(box([-bore, layout.coverTop], [bore, neckTop]), 'gas', 'none'),
    ...symmetric(box([36 * c, neckTop], [41 * c, y(116)]), 'aluminium', { mirror: true }),
    ...symmetric(neck(layout, bore), 'steel'),
    ...symmetric(can(layout), wetted, { close: true, mirror: true }),
    ...symmetric(box([shaftRadius, y(4)], [rotor, y(63)]), 'steel', { turned: true }),
    ...magnets(layout, { inner: rotor, outer: 17.4 * c, first: 0 }),
    ...symmetric(
      polyline(
        [29.2 * c, y(3)],
        [33.6 * c, y(3)],
        [33.6 * c, y(84)],
        [8 * c, y(84)],
        [8 * c, y(76)],
        [29.2 * c, y(76)],
      ),
      'steel',
      { turned: true },
    ),
    ...magnets(layout, { inner: 23.2 * c, outer: 29.2 * c, first: 1 }),
    ...bearings(layout, bore),
    seenBox([-shaftRadius, layout.coverTop - 16 * c], [shaftRadius, y(66)]),
    seenBox([-8 * c, y(84)], [8 * c, top]),
    seenBox([-12 * c, y(94)], [12 * c, y(108)]),
    stroke('thin', polyline([-12 * c, y(101)], [12 * c, y(101)])),
    ...symmetric(box([8 * c, y(114)], [54 * c, y(124)]), 'aluminium', { mirror: true }),
    ...(set.coupling.cooled ? connections(layout) : []),
  ];
};
