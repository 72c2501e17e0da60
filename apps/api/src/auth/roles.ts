import { Role } from '../generated/enums.js';

export { Role };

/** The maker's own people: everybody but the customer. */
export const makerRoles = [
  Role.applications_engineer,
  Role.sales_support,
  Role.approver,
  Role.catalogue_keeper,
] as const;

export const roleTitles: Readonly<Record<Role, string>> = {
  applications_engineer: 'applications engineer',
  sales_support: 'sales support',
  approver: 'approver',
  catalogue_keeper: 'catalogue keeper',
  customer: 'customer',
};
