export * from './conditions.js';
export * from './figure.js';
export * from './rule.js';
export * from './rules/closure/closure-bore.js';
export * from './rule-book.js';
export * from './tabulate.js';
export * from './variable.js';
