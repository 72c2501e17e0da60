export * from './format-count.js';
export * from './format-quantity.js';
export * from './parse-quantity.js';
export * from './pressure.js';
export { type NumberReading, readNumber } from './read-number.js';
export * from './units.js';
