import type {
  CoverPort,
  Impeller,
  ItemOf,
  SlotName,
  SlotPath,
  Status,
  VesselGeometry,
} from '@flangewise/model';
import type { HatchMaterial } from './scene.js';

/** Items chosen in one place, by slot. */
export type ItemsBySlot = { readonly [S in SlotName]?: ItemOf<S> | undefined };

/** Liquid levels as heights above the lowest inner point [m]. */
export interface Levels {
  readonly coldM: number;
  readonly hotM: number;
}

/** What stands beside a callout: the state of the slot and the tightest check in words. */
export interface SlotVerdict {
  readonly status: Status;
  readonly text?: string;
}

/** What is needed to draw a system: items by slot, levels, states. Nothing here is computed from the process. */
export interface DrawingInput {
  readonly title: string;
  readonly frame: ItemsBySlot;
  readonly sets: readonly {
    readonly label?: string | undefined;
    readonly count?: number | undefined;
    readonly items: ItemsBySlot;
    readonly levels?: Levels | undefined;
    /** Which slot sits on which cover port; without it ports are given out by size. */
    readonly ports?: Readonly<Record<string, SlotPath>> | undefined;
  }[];
  /** Working at once, each with its own drive; otherwise one is mounted at a time. */
  readonly parallel?: boolean | undefined;
  readonly verdicts?: Readonly<Partial<Record<SlotPath, SlotVerdict>>> | undefined;
}

/** All lengths below in millimetres. */
export interface DrawnVessel {
  readonly construction: 'metal' | 'glass' | 'lined';
  readonly innerDiameter: number;
  readonly cylinderLength: number;
  readonly wall: number;
  readonly endForm: VesselGeometry['endForm'];
  readonly endWall: number;
  readonly rimDiameter: number;
  readonly rimHeight: number;
  readonly body: HatchMaterial;
  readonly depth: number;
  readonly jacketGap: number | null;
  readonly bottomPort: number | null;
}

export interface DrawnPort {
  readonly name: CoverPort['name'];
  readonly diameter: number;
  readonly circle: number;
  /** Clockwise from the front, seen from above [deg]. */
  readonly angle: number;
  /** Outwards [deg]. */
  readonly tilt: number;
  readonly slot: SlotPath | null;
  /** Size to which a reducer brings it; null without one. */
  readonly reducedTo: number | null;
  /** Parts on the ports that the part on this one offers, by name. */
  readonly above: readonly { readonly name: string; readonly slot: SlotPath }[];
}

export interface DrawnSet {
  readonly index: number;
  readonly label: string | null;
  readonly count: number;
  readonly vessel: DrawnVessel;
  readonly levels: { readonly cold: number; readonly hot: number } | null;
  readonly cover: {
    readonly thickness: number;
    readonly lined: boolean;
    readonly body: HatchMaterial;
    readonly ports: readonly DrawnPort[];
  } | null;
  readonly closure: {
    readonly kind: 'bolted' | 'clamp' | 'segment';
    readonly bolts: { readonly count: number; readonly diameter: number } | null;
    readonly interlock: boolean;
  } | null;
  readonly seal: { readonly kind: 'O-ring' | 'flat gasket' | 'metal ring'; readonly diameter: number } | null;
  readonly stirrer: {
    readonly impeller: Impeller;
    readonly diameter: number;
    readonly bladeWidth: number;
    readonly bladeCount: number;
    readonly shaftDiameter: number;
  } | null;
  readonly shaft: { readonly length: number; readonly diameter: number } | null;
  readonly baffles: { readonly count: number; readonly width: number } | null;
  readonly coupling: {
    readonly torque: number;
    readonly metalFree: boolean;
    readonly cooled: boolean;
    readonly shaftDiameter: number;
  } | null;
  readonly heater: { readonly power: number } | null;
  readonly coil: {
    readonly tube: number;
    readonly diameter: number;
    readonly turns: number;
    readonly body: HatchMaterial;
  } | null;
  readonly probe: ItemOf<'temperatureProbe'>['kind'] | null;
  readonly relief: { readonly bore: number } | null;
  readonly vent: { readonly diameter: number } | null;
  readonly gasInlet: ItemOf<'gasInlet'>['kind'] | null;
  readonly sampling: boolean;
  readonly gauge: boolean;
  readonly sightGlass: { readonly diameter: number } | null;
  readonly charging: ItemOf<'charging'>['kind'] | null;
  readonly condenser: boolean;
  readonly basket: boolean;
  readonly processProbe: boolean;
  readonly bottomValve: { readonly kind: 'flush plug' | 'ball valve'; readonly diameter: number } | null;
  readonly shield: { readonly diameter: number; readonly height: number } | null;
}

export interface DrawingModel {
  readonly title: string;
  readonly parallel: boolean;
  readonly sets: readonly DrawnSet[];
  readonly frame: { readonly height: number; readonly topHeight: number } | null;
  readonly lift: {
    readonly kind: ItemOf<'lift'>['kind'];
    readonly moves: 'cover' | 'vessel';
    readonly stroke: number;
  } | null;
  readonly drive: { readonly power: number; readonly plate: string | null } | null;
  readonly circulator: boolean;
  /** Name of the chosen item by slot path, drawn or not. */
  readonly names: Readonly<Partial<Record<SlotPath, string>>>;
  readonly verdicts: Readonly<Partial<Record<SlotPath, SlotVerdict>>>;
}
