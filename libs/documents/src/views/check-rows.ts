import { parseSlotPath, type RuleResult, type SlotPath, type Status, statusRank } from '@flangewise/model';
import { formatNumber } from '@flangewise/quantities';
import { differenceText, figureText } from './figure-text.js';

/** One line of the compliance summary. */
export interface CheckRow {
  readonly status: Status;
  readonly title: string;
  /** Numbers and titles of the parts: "2 Coupling, 12 Stirrer". */
  readonly parts: string;
  readonly demand: string;
  readonly limit: string;
  /** Share of the limit; null where nothing can be divided. */
  readonly utilisation: number | null;
  readonly margin: string;
  readonly restsOn: string;
  /** The verdict in words; shown where numbers do not tell all. */
  readonly text: string;
}

/** What is only advised may be exceeded: then there is no margin to be told, and nothing fails. */
const isExceededAdvice = ({ status, reserve }: RuleResult): boolean =>
  reserve !== undefined && reserve < 0 && (status === 'met' || status === 'met with caution');

const marginText = (result: RuleResult): string => {
  const { status, reserve, unit } = result;
  if (status === 'not decidable') return 'open';
  if (reserve === undefined || isExceededAdvice(result)) return '';
  return `${differenceText(reserve, unit)}${status === 'outside standard range' ? ', review' : ''}`;
};

const restsOn = ({ source }: RuleResult): string => {
  const [first, ...others] = source;
  if (first === undefined) return 'no source named';
  const memory = source.some(({ basis }) => basis === 'from memory, unverified');
  const practice = source.every(({ basis }) => basis === 'common practice');
  const more = others.length === 0 ? '' : ` and ${String(others.length)} more`;
  return `${first.citation}${more}${memory ? ', partly from memory, unverified' : practice ? ', common practice' : ''}`;
};

const partsText = (paths: readonly string[], numbers: ReadonlyMap<SlotPath, number>): string => {
  const named = paths.flatMap((path) => {
    const number = numbers.get(path as SlotPath);
    return number === undefined || parseSlotPath(path) === undefined ? [] : [number];
  });
  return [...new Set(named)].toSorted((a, b) => a - b).join(', ');
};

/** Whether more is better here: the demand is a least value, the limit what the part reaches. */
const asksForMore = ({ demand, limit, status }: RuleResult): boolean => {
  if (typeof demand !== 'number' || typeof limit !== 'number') return false;
  const within = status === 'met' || status === 'met with caution';
  return within ? demand > limit : status === 'not met' && demand < limit;
};

/** Worst first; among equals the least room first. */
const order = (a: RuleResult, b: RuleResult): number =>
  statusRank[a.status] - statusRank[b.status] || (b.utilisation ?? -1) - (a.utilisation ?? -1);

interface Naming {
  readonly numbers: ReadonlyMap<SlotPath, number>;
  /** Name of a set where there are several. */
  readonly setName: (set: number) => string | null;
}

const titleOf = ({ title, set }: RuleResult, { setName }: Naming): string => {
  const name = set === undefined ? null : setName(set);
  return name === null ? title : `${title}, ${name}`;
};

const rowOf = (result: RuleResult, naming: Naming): CheckRow => {
  const inverted = asksForMore(result);
  return {
    status: result.status,
    title: titleOf(result, naming),
    parts: partsText(result.slots, naming.numbers),
    demand:
      result.demand === undefined
        ? result.status === 'not decidable'
          ? '?'
          : ''
        : figureText(result.demand, result.unit, inverted ? 'down' : 'up'),
    limit: result.limit === undefined ? '' : figureText(result.limit, result.unit, inverted ? 'up' : 'down'),
    utilisation: result.utilisation ?? null,
    margin: marginText(result),
    restsOn: restsOn(result),
    text: result.text,
  };
};

const comparesNothing = ({ demand, limit }: RuleResult): boolean =>
  demand === undefined && limit === undefined;

/** Results of one rule that judge without numbers and agree are told in one row. */
const gathered = (results: readonly RuleResult[]): RuleResult[] =>
  results.reduce<RuleResult[]>((rows, next) => {
    const last = rows.at(-1);
    const alike = last?.rule === next.rule && last.status === next.status && last.set === next.set;
    if (last === undefined || !alike || !comparesNothing(last) || !comparesNothing(next))
      return [...rows, next];
    const text = last.text.includes(next.text) ? last.text : `${last.text} ${next.text}`;
    return [...rows.slice(0, -1), { ...last, text, slots: [...last.slots, ...next.slots] }];
  }, []);

/** Results as rows, worst first: demands rounded up, limits down, each to the safe side. */
export const checkRowsOf = (results: readonly RuleResult[], naming: Naming): CheckRow[] =>
  gathered(results.toSorted(order)).map((result) => rowOf(result, naming));

const phrases: Readonly<Record<Status, string>> = {
  met: 'met',
  'met with caution': 'met with caution',
  'not met': 'not met',
  'outside standard range': 'outside the standard range',
  'not decidable': 'not decidable',
};

/** "22 checks: 18 met, 2 met with caution, 1 outside the standard range, 1 not decidable": each result counts, rows may tell several. */
export const checkCountText = (results: readonly RuleResult[]): string => {
  const statuses = Object.keys(phrases) as Status[];
  const counts = statuses
    .map((status) => ({ status, count: results.filter((result) => result.status === status).length }))
    .filter(({ count }) => count > 0)
    .map(({ status, count }) => `${String(count)} ${phrases[status]}`);
  const checks = `${formatNumber(results.length)} ${results.length === 1 ? 'check' : 'checks'}`;
  return counts.length === 0 ? checks : `${checks}: ${counts.join(', ')}`;
};

/** What stands above the compliance summary. */
export const checksSentence = (results: readonly RuleResult[]): string =>
  `${checkCountText(results)}. The thick line marks the limit.`;
