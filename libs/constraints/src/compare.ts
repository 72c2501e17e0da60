import type { Status } from '@flangewise/model';
import type { Figure } from './figure.js';
import type { Measure } from './rule.js';

const significantDigits = 12;

/** Both sides are rounded alike, so that every machine draws the line at the same place. */
const rounded = (value: number): number => Number(value.toPrecision(significantDigits));

/** value ≤ limit, for judgements that work a number out: −10 °C less 10 K is −20 °C on every machine. */
export const isAtMost = (value: number, limit: number): boolean => rounded(value) <= rounded(limit);

export interface Comparison {
  readonly status: Status;
  readonly demand: number;
  readonly limit: number;
  readonly utilisation?: number;
  readonly reserve: number;
  /** Why a met comparison still asks for care. */
  readonly unverified?: string;
}

/** A result that uses more than this share of its limit calls for care. */
export const usualCautionFrom = 0.95;

const utilisationOf = (demand: number, limit: number, measure: Measure): number | undefined => {
  if (measure.utilisation !== 'ratio') return 1 - (limit - demand) / measure.utilisation.span;
  return limit > 0 ? demand / limit : undefined;
};

export type ComparisonOutcome =
  | { readonly kind: 'compared'; readonly comparison: Comparison }
  | {
      readonly kind: 'missing';
      readonly missing: readonly string[];
      readonly demand?: number;
      readonly limit?: number;
    }
  | { readonly kind: 'not applicable' };

/** Sets a demand against a limit. An unlimited part, or a demand that does not arise, is no result. */
export const compare = (demand: Figure, limit: Figure, measure: Measure): ComparisonOutcome => {
  if (demand.kind === 'not applicable' || limit.kind === 'not applicable') return { kind: 'not applicable' };
  if (demand.kind === 'missing' || limit.kind === 'missing') {
    const fields = [demand, limit].flatMap((side) => (side.kind === 'missing' ? side.missing : []));
    return {
      kind: 'missing',
      missing: [...new Set(fields)],
      ...(demand.kind === 'known' && Number.isFinite(demand.value) ? { demand: demand.value } : {}),
      ...(limit.kind === 'known' && Number.isFinite(limit.value) ? { limit: limit.value } : {}),
    };
  }
  if (!Number.isFinite(demand.value) || !Number.isFinite(limit.value)) return { kind: 'not applicable' };
  const utilisation = utilisationOf(demand.value, limit.value, measure);
  const isMet = rounded(demand.value) <= rounded(limit.value);
  const isSpecial = !isMet && limit.special !== undefined && rounded(demand.value) <= rounded(limit.special);
  const note = demand.unverified ?? limit.unverified;
  const isTight = utilisation !== undefined && utilisation > (measure.cautionFrom ?? usualCautionFrom);
  const status: Status = isMet
    ? note !== undefined || isTight
      ? 'met with caution'
      : 'met'
    : isSpecial
      ? 'outside standard range'
      : 'not met';
  return {
    kind: 'compared',
    comparison: {
      status,
      demand: demand.value,
      limit: limit.value,
      reserve: limit.value - demand.value,
      ...(utilisation === undefined ? {} : { utilisation }),
      ...(note === undefined ? {} : { unverified: note }),
    },
  };
};
