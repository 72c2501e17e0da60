import type { Refusal, System } from '@flangewise/model';
import { slotPath } from '@flangewise/model';
import { type Bench, compileFor } from './bench.js';
import { isPossible } from './cheapest.js';
import { furthest } from './furthest.js';
import { type InquiryStatement, inquiryStatements, shownLimit } from './statements.js';

/** The same inquiry, asked of one family only. */
const onlyFamily = (system: System, family: string): System => ({
  ...system,
  inquiry: { ...system.inquiry, requirements: { ...system.inquiry.requirements, families: [family] } },
});

const freed = (system: System, statement: InquiryStatement, bench: Bench): string => {
  const { number, with: change } = statement;
  if (number === undefined || change === undefined) return `Without “${statement.text}” it would do.`;
  const limit = furthest(number.si, number.easier, (si) => isPossible(change(system, si), bench));
  if (limit === undefined) return `Without “${statement.text}” it would do.`;
  return `Fits with ${number.easier === 'lower' ? 'at most' : 'at least'} ${shownLimit(limit, number)}.`;
};

const refusalOf = (
  system: System,
  family: { name: string; items: number },
  bench: Bench,
): Refusal | undefined => {
  const asked = onlyFamily(system, family.name);
  if (isPossible(asked, bench)) return undefined;
  const statements = inquiryStatements(system).filter((s) => !s.path.startsWith('requirements.families'));
  const single = statements.find((s) => isPossible(s.without(asked), bench));
  if (single !== undefined) {
    return {
      what: family.name,
      items: family.items,
      reason: `Nothing of ${family.name} stands “${single.text}” together with the rest of the inquiry.`,
      frees: freed(asked, single, bench),
    };
  }
  const alone = statements.filter((s) => {
    const onlyThis = statements.filter((x) => x !== s).reduce((sys, x) => x.without(sys), asked);
    return !isPossible(onlyThis, bench);
  });
  const reasons = alone.length > 0 ? alone : statements.slice(0, 3);
  return {
    what: family.name,
    items: family.items,
    reason: `${family.name} does not reach ${reasons.map((s) => `“${s.text}”`).join(', nor ')}.`,
  };
};

/** Why each family that is not among the answers was left out, and what would let it in. */
export const refusalsOf = (system: System, bench: Bench): readonly Refusal[] => {
  const { variables } = compileFor(system, bench);
  const vessel = variables.find((v) => v.path === slotPath('vessel', 0));
  const families = new Map<string, number>();
  for (const option of vessel?.options ?? []) {
    if (option?.slot === 'vessel') families.set(option.family, (families.get(option.family) ?? 0) + 1);
  }
  return [...families].flatMap(([name, items]) => refusalOf(system, { name, items }, bench) ?? []);
};
