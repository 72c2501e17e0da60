export * from './exchange/catalogue-difference.js';
export * from './exchange/exchange-format.js';
export * from './exchange/import-report.js';
