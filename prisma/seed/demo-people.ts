/** Invented people of the invented maker Averholt and of its clients; addresses of the domain that is reserved for examples. */
export const demoPeople = [
  {
    id: 'demo-engineer',
    name: 'Ilse Tamrin',
    email: 'engineer@averholt.example',
    role: 'applications_engineer',
    clientId: null,
  },
  {
    id: 'demo-sales',
    name: 'Jorun Peckle',
    email: 'sales@averholt.example',
    role: 'sales_support',
    clientId: null,
  },
  {
    id: 'demo-approver',
    name: 'Marit Oswaldine',
    email: 'approver@averholt.example',
    role: 'approver',
    clientId: null,
  },
  {
    id: 'demo-keeper',
    name: 'Teodor Brask',
    email: 'catalogue@averholt.example',
    role: 'catalogue_keeper',
    clientId: null,
  },
  {
    id: 'demo-customer-sundrey',
    name: 'Lena Quorish',
    email: 'chemist@sundrey.example',
    role: 'customer',
    clientId: 'demo-client-sundrey',
  },
  {
    id: 'demo-customer-kelmoor',
    name: 'Davo Ferrant',
    email: 'chemist@kelmoor.example',
    role: 'customer',
    clientId: 'demo-client-kelmoor',
  },
] as const;
