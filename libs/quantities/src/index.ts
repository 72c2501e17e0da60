export * from './format-count.js';
export * from './format-quantity.js';
export * from './parse-quantity.js';
export * from './pressure.js';
export * from './units.js';
