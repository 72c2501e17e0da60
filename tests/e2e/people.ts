/** People of the demo by what they stand for. */
export const people = {
  engineer: 'engineer@averholt.example',
  sales: 'sales@averholt.example',
  approver: 'approver@averholt.example',
  keeper: 'catalogue@averholt.example',
  sundrey: 'chemist@sundrey.example',
  kelmoor: 'chemist@kelmoor.example',
} as const;

export type Person = keyof typeof people;

/** Companies that inquire. */
export const clients = { sundrey: 'Sundrey Fine Chemicals', kelmoor: 'Kelmoor Polymers' } as const;
