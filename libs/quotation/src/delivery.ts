import { type Item, slotPath } from '@flangewise/model';
import type { BillLine } from './bill-of-materials.js';
import days from './delivery-days.json' with { type: 'json' };

export interface DeliveryStep {
  readonly step: string;
  /** Working days. */
  readonly days: number;
}

export interface Delivery {
  /** Steps one after another: the slowest part, assembly, test, papers. */
  readonly chain: readonly DeliveryStep[];
  readonly days: number;
  readonly weeks: number;
}

/** A part and the places that it takes; several vessel sets take several. */
type Part = Pick<BillLine, 'item' | 'slots'>;

interface Plan {
  readonly assembly: number;
  readonly test: number;
  readonly furtherSet: number;
}

const planOf = (family: string): Plan =>
  (days.families as Readonly<Record<string, Plan>>)[family] ?? days.otherFamily;

/** Papers are written after the test, so their time comes on top of it. */
const isPaper = ({ item }: Part): boolean => item.slot === 'qualification';

const slowest = (lines: readonly Part[]): Part | undefined =>
  lines.reduce<Part | undefined>(
    (longest, line) =>
      longest === undefined || line.item.leadTimeDays > longest.item.leadTimeDays ? line : longest,
    undefined,
  );

/**
 * Delivery time: parts are made side by side, so the slowest one starts the chain; assembly and test follow, by the
 * slowest family of the system, with days for every further vessel set; acceptance and papers end it.
 */
export const deliveryOf = (lines: readonly Part[]): Delivery => {
  const vessels = lines.flatMap(({ item, slots }) =>
    item.slot === 'vessel' ? slots.map(() => item.family) : [],
  );
  const plans = vessels.map(planOf);
  const longest = (pick: (plan: Plan) => number): number => Math.max(0, ...plans.map(pick));
  const part = slowest(lines.filter((line) => !isPaper(line)));
  const papers = slowest(lines.filter(isPaper));
  const chain: readonly DeliveryStep[] = [
    ...(part === undefined ? [] : [{ step: part.item.name, days: part.item.leadTimeDays }]),
    {
      step: 'Assembly',
      days: longest((p) => p.assembly) + Math.max(0, vessels.length - 1) * longest((p) => p.furtherSet),
    },
    { step: 'Pressure and function test', days: longest((p) => p.test) },
    ...(papers === undefined ? [] : [{ step: papers.item.name, days: papers.item.leadTimeDays }]),
  ].filter((step) => step.days > 0);
  const total = chain.reduce((sum, step) => sum + step.days, 0);
  return { chain, days: total, weeks: Math.ceil(total / days.daysPerWeek) };
};

/** Working days for parts that each take one place, as a search lists them. */
export const deliveryDaysOf = (items: readonly Item[]): number =>
  deliveryOf(items.map((item) => ({ item, slots: [slotPath(item.slot)] }))).days;
