export * from './evidence.js';
export * from './outcome.js';
