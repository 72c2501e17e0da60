export * from './catalogue-revision.js';
export * from './demo-catalogue.js';
export * from './find-items.js';
export * from './range.js';
export * from './special-rates.js';
export { preferredPressures } from './preferred-pressure.js';
