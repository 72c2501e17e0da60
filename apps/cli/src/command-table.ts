import type { Command } from './command.js';
import { auditCommand } from './commands/audit.js';
import { calcCommand } from './commands/calc.js';
import { checkCommand } from './commands/check.js';
import { explainCommand } from './commands/explain.js';
import { narrowCommand } from './commands/narrow.js';
import { offerCommand } from './commands/offer.js';
import { rulesCommand } from './commands/rules.js';
import { schemaCommand } from './commands/schema.js';
import { solveCommand } from './commands/solve.js';

/** Every command, in the order of the work. */
export const commands: readonly Command[] = [
  solveCommand,
  checkCommand,
  narrowCommand,
  explainCommand,
  offerCommand,
  auditCommand,
  rulesCommand,
  calcCommand,
  schemaCommand,
];
