import type { FluidState } from './fluid-state.js';

/** Categories in rising order. */
export const pedCategories = ['out of scope', 'Art4(3)', 'I', 'II', 'III', 'IV'] as const;
export type PedCategory = (typeof pedCategories)[number];

/** What a case in which readings of annex II differ is answered with. */
export const disputedAdvice = 'check with the notified body';

export interface VesselPoint {
  readonly volumeL: number;
  readonly maxPressureBarGauge: number;
  readonly fluidState: FluidState;
  readonly fluidGroup: 1 | 2;
}

export interface VesselClass {
  readonly category: PedCategory;
  /** Table of annex II; 0 where the directive does not apply. */
  readonly table: 0 | 1 | 2 | 3 | 4;
  /** Readings of the table differ here; the category is the stricter one, or that of the text of article 4. */
  readonly disputed: boolean;
}

/** A point on a line belongs to the lower category: PS·V of 49.999 999 999 9 is 50. */
const onGrid = (value: number): number => Number(value.toPrecision(12));

type Line = readonly [limit: number, category: PedCategory];

const belowLines = (value: number, lines: readonly Line[], above: PedCategory): PedCategory =>
  lines.find(([limit]) => value <= limit)?.[1] ?? above;

/** Table 1: gases of group 1. */
const gasGroup1 = (ps: number, volumeL: number): PedCategory =>
  volumeL <= 1
    ? belowLines(
        ps,
        [
          [200, 'Art4(3)'],
          [1000, 'III'],
        ],
        'IV',
      )
    : belowLines(
        onGrid(ps * volumeL),
        [
          [25, 'Art4(3)'],
          [50, 'I'],
          [200, 'II'],
          [1000, 'III'],
        ],
        'IV',
      );

/** Table 2: gases of group 2. */
const gasGroup2 = (ps: number, volumeL: number): PedCategory =>
  volumeL <= 1
    ? belowLines(
        ps,
        [
          [1000, 'Art4(3)'],
          [3000, 'III'],
        ],
        'IV',
      )
    : belowLines(
        onGrid(ps * volumeL),
        [
          [50, 'Art4(3)'],
          [200, 'I'],
          [1000, 'II'],
          [3000, 'III'],
        ],
        'IV',
      );

/** Table 3: liquids of group 1. Article 4 asks for V above 1 L besides PS·V above 200 bar·L. */
const liquidGroup1 = (ps: number, volumeL: number): PedCategory => {
  const product = onGrid(ps * volumeL);
  if (ps > 500) return product > 200 ? 'III' : 'II';
  if (product <= 200 || volumeL <= 1) return 'Art4(3)';
  return ps <= 10 ? 'I' : 'II';
};

/** Table 4: liquids of group 2. */
const liquidGroup2 = (ps: number, volumeL: number): PedCategory => {
  if (ps <= 10) return 'Art4(3)';
  if (onGrid(ps * volumeL) <= 10_000) return ps <= 1000 ? 'Art4(3)' : 'I';
  return ps <= 500 ? 'I' : 'II';
};

/**
 * Category of a vessel by article 4 and the tables of annex II. Disputed: table 2 at PS up to 4 bar beyond
 * 1 000 bar·L (a line at PS = 4 bar is read in two ways) and table 3 at V up to 1 L beyond 200 bar·L.
 */
export const classifyVessel = ({
  volumeL,
  maxPressureBarGauge: ps,
  fluidState,
  fluidGroup,
}: VesselPoint): VesselClass => {
  if (ps <= 0.5) return { category: 'out of scope', table: 0, disputed: false };
  const product = onGrid(ps * volumeL);
  if (fluidState === 'gas') {
    return fluidGroup === 1
      ? { category: gasGroup1(ps, volumeL), table: 1, disputed: false }
      : { category: gasGroup2(ps, volumeL), table: 2, disputed: ps <= 4 && product > 1000 };
  }
  return fluidGroup === 1
    ? { category: liquidGroup1(ps, volumeL), table: 3, disputed: volumeL <= 1 && product > 200 }
    : { category: liquidGroup2(ps, volumeL), table: 4, disputed: false };
};

/** The strictest of several categories: chambers of one vessel, vessels of an assembly, fluids of one chamber. */
export const highestCategory = (categories: readonly PedCategory[]): PedCategory =>
  categories.reduce<PedCategory>(
    (highest, category) =>
      pedCategories.indexOf(category) > pedCategories.indexOf(highest) ? category : highest,
    'out of scope',
  );
