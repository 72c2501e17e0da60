import { arc, box, chain, type Contour, mirrored, polyline, reversed } from './contour.js';
import { couplingTop } from './draw-coupling.js';
import type { DrawingModel } from './drawing-model.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { seen, seenBox, stroke } from './shape.js';

type Drive = NonNullable<DrawingModel['drive']>;

/** Scale of the motor; 1 for 0.37 kW. Volume goes about with power. */
const motorScale = (power: number): number => Math.min(6, Math.max(0.42, (power / 370) ** (1 / 3)));

const sits = (layout: SetLayout): number => couplingTop(layout) + 10 * layout.couplingScale;

/** Highest point of the motor [mm]. */
export const driveTop = (layout: SetLayout, drive: Drive): number =>
  sits(layout) - 186 * motorScale(drive.power);

/** Upper and lower edge of the plate with the marking; null without one [mm]. */
export const platePlace = (
  layout: SetLayout,
  drive: Drive,
): { readonly top: number; readonly bottom: number } | null => {
  if (drive.plate === null) return null;
  const m = motorScale(drive.power);
  return { top: sits(layout) - 106 * m, bottom: sits(layout) - 76 * m };
};

/** Motor with cooling ribs, fan cowl, terminal box and the plate of its protection. */
export const drawDrive = (layout: SetLayout, drive: Drive): Shape[] => {
  const m = motorScale(drive.power);
  const base = sits(layout);
  const y = (up: number): number => base - up * m;
  const ribs = Array.from({ length: 13 }, (_, i) =>
    polyline([-52 * m, y(26 + i * 9)], [52 * m, y(26 + i * 9)]),
  );
  const slots = [-34, -18, 18, 34].map((x) => polyline([x * m, y(146)], [x * m, y(186)]));
  const cowl: Contour = chain(
    polyline([50 * m, y(146)], [50 * m, y(178)]),
    arc({ centre: [42 * m, y(178)], radius: 8 * m, from: 0, to: -90 }),
  );
  const plate: Shape[] =
    drive.plate === null
      ? []
      : [
          seenBox([-33 * m, y(106)], [33 * m, y(76)]),
          { kind: 'text', at: [0, y(91)], size: 12.5 * m, text: drive.plate },
        ];
  return [
    seenBox([-50 * m, y(10)], [50 * m, base]),
    seenBox([-52 * m, y(146)], [52 * m, y(10)]),
    stroke('thin', ...ribs),
    seen(chain(cowl, reversed(mirrored(cowl)))),
    stroke('thin', polyline([-50 * m, y(154)], [50 * m, y(154)]), ...slots),
    seen(box([-82 * m, y(106)], [-52 * m, y(54)])),
    stroke(
      'thin',
      polyline([-58 * m, y(106)], [-58 * m, y(54)]),
      polyline([-82 * m, y(88)], [-58 * m, y(88)]),
    ),
    seenBox([-74 * m, y(54)], [-64 * m, y(44)]),
    ...plate,
  ];
};

const plateTop = (layout: SetLayout): number => (layout.mantle?.bottom ?? layout.bottom) + 2 * layout.detail;

/** Housing of the drive under the vessel that turns a stirring bar. */
export const drawBarDrive = (layout: SetLayout): Shape[] => {
  const u = layout.detail;
  const [top, r] = [plateTop(layout), layout.outer * 0.9];
  return [
    seenBox([-r, top], [r, top + 30 * u]),
    stroke('thin', polyline([-r, top + 14 * u], [r, top + 14 * u])),
  ];
};

/** The magnets that the bar follows: the coupling of such a set. */
export const drawBarMagnets = (layout: SetLayout): Shape[] => {
  const u = layout.detail;
  const [top, r] = [plateTop(layout), layout.outer * 0.9];
  return [
    seenBox([-r * 0.7, top + 3 * u], [-r * 0.2, top + 10 * u], 'magnet'),
    seenBox([r * 0.2, top + 3 * u], [r * 0.7, top + 10 * u], 'counter magnet'),
  ];
};
