import type { SlotPath, Status } from '@flangewise/model';
import type { Box, Contour, Point } from './contour.js';

/** Line types of ISO 128-2 as they are used here; widths on paper stand in `line-style.ts`. */
export type LineType =
  'cut' | 'edge' | 'fine' | 'thin' | 'hidden' | 'centre' | 'level' | 'hot level' | 'disc' | 'none';

/** What a sectioned body is made of, as far as the hatch tells. */
export type HatchMaterial =
  'steel' | 'nickel' | 'reactive' | 'aluminium' | 'polymer' | 'glass' | 'insulation' | 'liquid';

/** Neighbouring parts are told apart by the turn and the spacing of their hatch. */
export interface Hatch {
  readonly material: HatchMaterial;
  readonly turned: boolean;
  readonly close: boolean;
}

export type Fill =
  'part' | 'solid' | 'gas' | 'heat' | 'water' | 'magnet' | 'counter magnet' | 'sheet' | 'none' | Hatch;

export type Shape =
  | {
      readonly kind: 'area';
      readonly contour: Contour;
      readonly line: LineType;
      readonly fill: Fill;
    }
  | { readonly kind: 'stroke'; readonly contours: readonly Contour[]; readonly line: LineType }
  | {
      readonly kind: 'circle';
      readonly centre: Point;
      readonly radius: number;
      readonly line: LineType;
      readonly fill: Fill;
    }
  | { readonly kind: 'text'; readonly at: Point; readonly size: number; readonly text: string };

/** What is drawn of one slot in one go; a slot may have several, behind and before other parts. */
export interface Part {
  /** null for what no slot answers for: contents and centre lines. */
  readonly slot: SlotPath | null;
  readonly shapes: readonly Shape[];
}

/** A length between two points, shown beside the drawing. */
export interface Dimension {
  readonly of: 'vessel' | 'stroke' | 'height';
  readonly kind: 'horizontal' | 'vertical';
  readonly from: Point;
  readonly to: Point;
  /** Where the dimension line runs: y of a horizontal one, x of a vertical one. */
  readonly at: number;
  readonly text: string;
}

/** A slot that is drawn or chosen: what the callouts say. Numbered in reading order. */
export interface SceneSlot {
  readonly path: SlotPath;
  readonly title: string;
  readonly name: string;
  readonly set: number | null;
  readonly status: Status | null;
  /** Verdict in a few words, for instance "158 of 200 °C". */
  readonly text: string | null;
}

/** A drawing to scale, 1:1 in millimetres; parts in painter's order. */
export interface Scene {
  readonly title: string;
  /** What it is called where it is no section of its title. */
  readonly name?: string;
  readonly bounds: Box;
  readonly parts: readonly Part[];
  readonly slots: readonly SceneSlot[];
  readonly dimensions: readonly Dimension[];
  /** Names of vessel sets under their axes; empty for one set. */
  readonly labels: readonly { readonly at: Point; readonly text: string }[];
  /** Whether stand or column are drawn shortened by a break. */
  readonly broken: boolean;
}
