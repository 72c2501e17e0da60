import { Role } from '../generated/enums.js';

export { Role };

export const roleTitles: Readonly<Record<Role, string>> = {
  applications_engineer: 'applications engineer',
  sales_support: 'sales support',
  approver: 'approver',
  catalogue_keeper: 'catalogue keeper',
  customer: 'customer',
};
