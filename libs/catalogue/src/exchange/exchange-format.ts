/** Files in which a catalogue leaves and comes back: one table, a workbook of a sheet per slot, the document itself. */
export const exchangeFormats = ['csv', 'xlsx', 'json'] as const;

export type ExchangeFormat = (typeof exchangeFormats)[number];

export const isExchangeFormat = (name: string): name is ExchangeFormat =>
  exchangeFormats.some((format) => format === name);
