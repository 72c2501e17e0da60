import type { Status } from '@flangewise/model';

/** One stroke or area of a state mark, in a square from −8 to 8; `ink` is the colour of the state, `ground` of the sheet. */
export interface MarkPiece {
  readonly d: string;
  readonly fill: 'ink' | 'ground' | 'none';
  readonly stroke: 'ink' | 'ground' | 'none';
  readonly width: number;
  readonly dash?: readonly number[];
}

/** A circle as path data, starting at its left. */
const ring = (radius: number, y = 0): string =>
  `M${String(-radius)} ${String(y)}A${String(radius)} ${String(radius)} 0 1 1 ${String(radius)} ${String(y)}A${String(radius)} ${String(radius)} 0 1 1 ${String(-radius)} ${String(y)}Z`;

const solid = (d: string): MarkPiece => ({ d, fill: 'ink', stroke: 'none', width: 0 });
const scratch = (d: string, width: number): MarkPiece => ({ d, fill: 'none', stroke: 'ground', width });

/** Five states, told apart by shape alone: disc, triangle, square, nut, broken ring. */
export const statusMarks: Readonly<Record<Status, readonly MarkPiece[]>> = {
  met: [solid(ring(6.6)), scratch('M-3.1 .2L-.9 2.5L3.3 -2.3', 1.7)],
  'met with caution': [
    { d: 'M0 -7.2L7.6 6.2L-7.6 6.2Z', fill: 'ink', stroke: 'ink', width: 0.8 },
    scratch('M0 -3L0 1.6', 1.8),
    { d: ring(1.05, 4), fill: 'ground', stroke: 'none', width: 0 },
  ],
  'not met': [solid('M-6.6 -6.6L6.6 -6.6L6.6 6.6L-6.6 6.6Z'), scratch('M-3 -3L3 3M3 -3L-3 3', 1.8)],
  'outside standard range': [
    { d: 'M-3.7 -6.5L3.7 -6.5L7.4 0L3.7 6.5L-3.7 6.5L-7.4 0Z', fill: 'ground', stroke: 'ink', width: 1.7 },
    { d: ring(2.7), fill: 'none', stroke: 'ink', width: 1.5 },
  ],
  'not decidable': [
    { d: ring(6.4), fill: 'ground', stroke: 'ink', width: 1.5, dash: [2.9, 2.12] },
    { d: 'M-1.9 -1.4A1.9 1.9 0 1 1 .5 .3Q0 .6 0 1.4', fill: 'none', stroke: 'ink', width: 1.4 },
    solid(ring(0.95, 3.5)),
  ],
};

/** Short names for classes and colour tokens. */
export const statusKeys = {
  met: 'met',
  'met with caution': 'caution',
  'not met': 'fail',
  'outside standard range': 'special',
  'not decidable': 'open',
} as const satisfies Record<Status, string>;
