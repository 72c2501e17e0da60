export * from './exchange/catalogue-difference.js';
export * from './exchange/difference-of.js';
export * from './exchange/exchange-format.js';
export * from './exchange/import-report.js';
export { readImport } from './exchange/read-import.js';
export * from './exchange/write-export.js';
