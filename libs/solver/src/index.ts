export type * from './problem.js';
export { ProblemError } from './problem.js';
export type * from './answers.js';
export type { Engine } from './engine.js';
export { createEngine } from './create-engine.js';
