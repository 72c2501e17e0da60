import type { Choice, Conflict, ExplainOptions, Explanation, WhyNot, WhyNotOptions } from './answers.js';
import { conflictsAndCorrections } from './conflict-enumeration.js';
import { ConflictFinder } from './conflicts.js';
import { Consistency } from './consistency.js';
import type { Core } from './core.js';
import type { Meter, Ticker } from './meter.js';
import type { SolutionPool } from './solution-pool.js';

interface Setting {
  readonly core: Core;
  readonly pool: SolutionPool;
}

export function explain(setting: Setting, options: ExplainOptions, meter: Meter<Explanation>): Explanation {
  const choices = options.choices ?? [];
  const consistency = new Consistency(setting.core, setting.pool, meter);
  const finder = new ConflictFinder(setting.core, consistency);
  if (consistency.check(choices)) return { kind: 'consistent' };
  if (!consistency.check([])) return { kind: 'background inconsistent', constraints: finder.constraints([]) };
  if (options.all !== true)
    return { kind: 'conflict', conflicts: [finder.conflict(choices)], complete: false };

  const conflicts: Conflict[] = [];
  const most = Math.max(1, options.most ?? Infinity);
  const task = { choices, weightOf: () => 1, consistency, finder };
  for (const finding of conflictsAndCorrections(task, meter)) {
    if (finding.kind !== 'conflict') continue;
    if (conflicts.length >= most) return { kind: 'conflict', conflicts, complete: false };
    conflicts.push({ choices: finding.choices, constraints: finder.constraints(finding.choices) });
    meter.known = () => ({ kind: 'conflict', conflicts, complete: false });
    meter.report(conflicts.length);
  }
  return { kind: 'conflict', conflicts, complete: true };
}

/** The conflict of one option with the choices of the other variables. */
export function whyNot(setting: Setting, options: WhyNotOptions, meter: Ticker): WhyNot {
  const option: Choice = { variable: options.variable, value: options.value };
  const others = (options.choices ?? []).filter((c) => c.variable !== option.variable);
  const consistency = new Consistency(setting.core, setting.pool, meter);
  if (consistency.check([option, ...others])) return { kind: 'possible' };
  const finder = new ConflictFinder(setting.core, consistency);
  const choices = finder.choices(others, [option]);
  return { kind: 'conflict', choices, constraints: finder.constraints([option, ...choices]) };
}
