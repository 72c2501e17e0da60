import type { ItemOf } from '@flangewise/model';

export const burstReads = ['burstPressurePaGauge', 'tolerance'] as const;

/** What a set sees before its disc opens at the latest: everything under pressure has to stand it [Pa, gauge]. */
export const highestPressurePaGauge = (relief: Pick<ItemOf<'relief'>, (typeof burstReads)[number]>): number =>
  relief.burstPressurePaGauge * (1 + relief.tolerance);
