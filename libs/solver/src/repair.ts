import type { Change, Choice, Repair, RepairOptions, Repairs } from './answers.js';
import { cheapest } from './cheapest.js';
import { conflictsAndCorrections } from './conflict-enumeration.js';
import { ConflictFinder } from './conflicts.js';
import { Consistency } from './consistency.js';
import type { Core } from './core.js';
import { groupCosts, valuesOf } from './group-costs.js';
import type { Meter, Ticker } from './meter.js';
import { allowChoices, enter } from './question.js';
import { verified } from './verified.js';
import type { SolutionPool } from './solution-pool.js';

interface Setting {
  readonly core: Core;
  readonly pool: SolutionPool;
}

/** The cheapest solution that keeps all but the choices given up. */
function repairGivingUp(
  task: { core: Core; choices: readonly Choice[]; givenUp: readonly Choice[] },
  meter: Ticker,
): Omit<Repair, 'rank'> {
  const { core, choices, givenUp } = task;
  const allowed = allowChoices(
    core,
    choices.filter((c) => !givenUp.includes(c)),
  );
  const state = enter(core, allowed);
  const costs = groupCosts(core, allowed);
  const found =
    state && cheapest({ network: core.network, state, cost: costs.cost, diagrams: core.diagrams }, meter);
  if (!found) throw new Error('a correction without a solution; please report');
  const { solution, cost } = verified(core, valuesOf(costs, found.groups));
  const changes = givenUp.map(({ variable, value }): Change => ({
    variable,
    from: value,
    to: solution[variable] as number,
  }));
  return { changes, cost };
}

/** Conflicts found without a repair before some repair is sought, so that a stopped query has one to offer. */
const MANY_CONFLICTS = 15;

/** A smallest set of choices to give up, not necessarily the lightest: keeps one choice after another, the heaviest first. */
function someCorrection(
  choices: readonly Choice[],
  by: { weightOf: (choice: Choice) => number; consistency: Consistency },
): Choice[] {
  const kept: Choice[] = [];
  for (const choice of [...choices].sort((a, b) => by.weightOf(b) - by.weightOf(a)))
    if (by.consistency.check([...kept, choice])) kept.push(choice);
  return choices.filter((choice) => !kept.includes(choice));
}

export function repair(setting: Setting, options: RepairOptions, meter: Meter<Repairs>): Repairs {
  const { core } = setting;
  const choices = options.choices ?? [];
  const most = Math.max(1, options.most ?? 5);
  const consistency = new Consistency(core, setting.pool, meter);
  const finder = new ConflictFinder(core, consistency);
  if (consistency.check(choices)) return { kind: 'consistent' };
  if (!consistency.check([])) return { kind: 'background inconsistent', constraints: finder.constraints([]) };

  const repairs: Repair[] = [];
  let conflicts = 0;
  const weightOf = (choice: Choice): number => (options.by === 'priority' ? (choice.priority ?? 1) : 1);
  for (const finding of conflictsAndCorrections({ choices, weightOf, consistency, finder }, meter)) {
    if (finding.kind === 'conflict') {
      if (++conflicts !== MANY_CONFLICTS || repairs.length > 0) continue;
      const givenUp = someCorrection(choices, { weightOf, consistency });
      const rank = givenUp.reduce((sum, choice) => sum + weightOf(choice), 0);
      const some = repairGivingUp({ core, choices, givenUp }, meter);
      const first: Repair = { ...some, rank: options.by === 'cost' ? some.cost : rank };
      meter.known = () => ({ kind: 'repairs', repairs: [first], complete: false });
      continue;
    }
    // By number and priority the corrections come in order; by cost all are needed before the cheapest are known.
    if (options.by !== 'cost' && repairs.length >= most) return { kind: 'repairs', repairs, complete: false };
    const found = repairGivingUp({ core, choices, givenUp: finding.choices }, meter);
    repairs.push({ ...found, rank: options.by === 'cost' ? found.cost : finding.weight });
    repairs.sort((a, b) => a.rank - b.rank || a.cost - b.cost);
    meter.known = () => ({ kind: 'repairs', repairs: repairs.slice(0, most), complete: false });
    meter.report(repairs.length);
  }
  return { kind: 'repairs', repairs: repairs.slice(0, most), complete: repairs.length <= most };
}
