import type { Rule } from './rule.js';
import { closureBore } from './rules/closure/closure-bore.js';

/** Every rule in force, in the order in which results are shown. */
export const ruleBook: readonly Rule[] = [closureBore];
