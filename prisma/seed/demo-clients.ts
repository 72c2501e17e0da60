/** Invented companies that inquire at the invented maker Averholt. */
export const demoClients = [
  { id: 'demo-client-sundrey', name: 'Sundrey Fine Chemicals' },
  { id: 'demo-client-kelmoor', name: 'Kelmoor Polymers' },
] as const;
