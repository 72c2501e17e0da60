import type { RuleResult, Status } from '@flangewise/model';
import { slots, parseSlotPath } from '@flangewise/model';

/** Where a condition is stopped first: the limit in its own unit, by what, in which state. */
export interface FirstLimit {
  readonly si: number;
  /** The part that stops it, as its slot is called. */
  readonly by: string;
  readonly status: Status;
}

/** Checks whose demand grows in proportion to a condition that has another unit than the demand. */
const proportional: Readonly<Record<string, string>> = {
  batch: 'volume.hot-fill',
  uptake: 'heat.removal',
};

const sameNumber = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a));

const partOf = (result: RuleResult): string => {
  const parsed = parseSlotPath(result.slots[0] ?? '');
  return parsed === undefined ? result.title : slots[parsed.slot].title;
};

const limitFor = (result: RuleResult, highest: number, key: string): number | undefined => {
  const { demand, limit } = result;
  if (typeof demand !== 'number' || typeof limit !== 'number' || demand <= 0) return undefined;
  if (proportional[key] !== undefined)
    return result.rule === proportional[key] ? (highest * limit) / demand : undefined;
  return sameNumber(demand, highest) ? limit : undefined;
};

export interface LimitQuestion {
  /** Name of the condition: pressure, temperature, batch, viscosity, speed, uptake. */
  readonly key: string;
  /** UCUM unit of the checks that the condition meets directly. */
  readonly unit: string;
  readonly highest: number;
  readonly set: number;
}

/** The first limit that a condition meets as it grows, among the checks that read it; undefined where none does. */
export const firstLimitOf = (
  results: readonly RuleResult[],
  { key, unit, highest, set }: LimitQuestion,
): FirstLimit | undefined =>
  results
    .filter(
      (result) =>
        result.kind === 'hard' &&
        (result.set ?? set) === set &&
        (proportional[key] !== undefined || result.unit === unit),
    )
    .flatMap((result): FirstLimit[] => {
      const si = limitFor(result, highest, key);
      return si === undefined ? [] : [{ si, by: partOf(result), status: result.status }];
    })
    .toSorted((a, b) => a.si - b.si)[0];
