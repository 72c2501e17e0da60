import type { DrawnSet } from './drawing-model.js';
import { endOf } from './end-form.js';

/**
 * Where the parts of one set stand, in millimetres: x from its axis, y downwards from its sealing plane.
 *
 * Vessel, cover, bolts, seal, stirrer, shaft, coil and relief bore are drawn from their numbers. What a
 * catalogue gives no size for (fittings, the inside of the coupling, motor, mantle walls) is drawn in
 * proportion: fittings to the bore, the coupling to its torque, the motor to its power.
 */
export interface SetLayout {
  readonly set: DrawnSet;
  /** Scale of what is drawn in proportion; 1 for a bore of 110 mm. */
  readonly detail: number;
  readonly inner: number;
  readonly outer: number;
  readonly cylinder: number;
  readonly depth: number;
  /** Lowest point of the vessel wall. */
  readonly bottom: number;
  readonly rim: number;
  readonly rimHeight: number;
  /** Height of the cylindrical face of the rim; the rest slopes where a clamp or segments grip it. */
  readonly rimFace: number;
  readonly coverRadius: number;
  readonly coverTop: number;
  readonly bolt: { readonly diameter: number; readonly circle: number; readonly count: number };
  /** Outer radius of clamp or segments; the cover radius without one. */
  readonly closureRadius: number;
  /** Wall of the jacket and where it starts; null without a jacket. */
  readonly jacket: { readonly gap: number; readonly wall: number; readonly top: number } | null;
  readonly mantle: {
    readonly inner: number;
    readonly block: number;
    readonly outer: number;
    readonly top: number;
    readonly bottom: number;
  } | null;
  /** Half width of everything around the vessel below the cover. */
  readonly girth: number;
  readonly shaftRadius: number;
  /** Scale of the coupling; 1 for 2.6 N·m. */
  readonly couplingScale: number;
  /** Top of the neck that carries the coupling. */
  readonly neckTop: number;
  readonly neckRadius: number;
}

const between = (low: number, value: number, high: number): number => Math.min(high, Math.max(low, value));

const neckRadiusOf = (set: DrawnSet, wanted: number): number => {
  const edges = (set.cover?.ports ?? [])
    .filter((port) => port.slot !== null && port.circle > 0)
    .map((port) => port.circle / 2 - port.diameter * 0.9);
  return Math.max(Math.min(wanted, ...edges), wanted * 0.45);
};

const rimOf = (set: DrawnSet) => {
  const { vessel, closure } = set;
  const grips = closure?.kind === 'clamp' || closure?.kind === 'segment';
  const rim = vessel.rimDiameter / 2;
  const diameter = closure?.bolts?.diameter ?? rim * 0.11;
  const besideGlass = vessel.construction === 'glass' && !grips;
  const outer = vessel.innerDiameter / 2 + vessel.wall;
  return {
    rim,
    rimHeight: vessel.rimHeight,
    rimFace: grips ? vessel.rimHeight * 0.76 : vessel.rimHeight,
    coverRadius: besideGlass ? rim + 2.6 * diameter : rim,
    bolt: {
      diameter,
      circle: besideGlass ? rim + 1.2 * diameter : Math.max(rim - 1.15 * diameter, outer + 0.9 * diameter),
      count: closure?.bolts?.count ?? 8,
    },
    closureRadius: grips
      ? rim * (closure.kind === 'segment' ? 1.39 : 1.24)
      : besideGlass
        ? rim + 2.6 * diameter
        : rim,
  };
};

const aroundVessel = (set: DrawnSet, around: { outer: number; bottom: number; detail: number }) => {
  const { vessel } = set;
  const { outer, bottom, detail } = around;
  const jacket =
    vessel.jacketGap === null
      ? null
      : {
          gap: vessel.jacketGap,
          wall: vessel.construction === 'glass' ? vessel.wall : Math.max(2, 0.6 * vessel.wall),
          top: vessel.rimHeight * 1.1 + 16 * detail,
        };
  const inner = outer + 1.4 * detail;
  const mantle =
    set.heater === null || jacket !== null
      ? null
      : {
          inner,
          block: inner + 17.6 * detail,
          outer: inner + 37.6 * detail,
          top: vessel.rimHeight + 20 * detail,
          bottom: bottom + 19.5 * detail,
        };
  return { jacket, mantle };
};

export const layoutOf = (set: DrawnSet): SetLayout => {
  const { vessel } = set;
  const detail = between(0.4, (vessel.innerDiameter / 110) ** 0.7, 5);
  const inner = vessel.innerDiameter / 2;
  const outer = inner + vessel.wall;
  const depth =
    vessel.cylinderLength + endOf(vessel.endForm, { radius: inner, top: 0, wall: vessel.endWall }).depth;
  const bottom = depth + vessel.endWall;
  const rim = rimOf(set);
  const around = aroundVessel(set, { outer, bottom, detail });
  const shaftRadius = (set.shaft?.diameter ?? set.stirrer?.shaftDiameter ?? 12 * detail) / 2;
  const torque = set.coupling?.torque ?? 2.6;
  const couplingScale = Math.max(between(0.4, (torque / 2.6) ** 0.26, 6), shaftRadius * 0.14);
  const coverTop = -(set.cover?.thickness ?? 0.4 * vessel.rimDiameter * 0.5);
  const jacketGirth =
    around.jacket === null ? 0 : outer + around.jacket.gap + around.jacket.wall + 24 * detail;
  return {
    set,
    detail,
    inner,
    outer,
    cylinder: vessel.cylinderLength,
    depth,
    bottom,
    ...rim,
    ...around,
    coverTop,
    girth: Math.max(
      rim.closureRadius,
      around.mantle?.outer ?? 0,
      jacketGirth,
      (set.shield?.diameter ?? 0) / 2,
    ),
    shaftRadius,
    couplingScale,
    neckTop: coverTop - Math.max(74 * couplingScale, 66 * detail),
    neckRadius: neckRadiusOf(set, 28 * couplingScale),
  };
};
