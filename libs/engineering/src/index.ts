export * from './calculation.js';
export * from './registry.js';
