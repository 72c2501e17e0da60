import type { Prisma } from '../generated/client.js';
import type { Person } from '../trpc/context.js';
import { Role } from './roles.js';

/** Customers get answers without item prices, price differences, cost and gross margin. */
export const seesPrices = ({ role }: Pick<Person, 'role'>): boolean => role !== Role.customer;

/** The rows that a person may know of. Every query by id carries it, so that what is another client's is not found. */
export function visibleInquiries({ role, clientId }: Person): Prisma.InquiryWhereInput {
  if (role !== Role.customer) return {};
  if (clientId === null) throw new Error('the database admits no customer without a client');
  return { clientId };
}

export const visibleSystems = (person: Person): Prisma.SystemWhereInput => ({
  inquiry: visibleInquiries(person),
});

/** A customer knows of what was sent to him, later replaced or not; the maker's people know of everything. */
export const visibleOfferRevisions = ({ role }: Person): Prisma.OfferRevisionWhereInput =>
  role === Role.customer ? { sentAt: { not: null } } : {};

export const visibleOffers = (person: Person): Prisma.OfferWhereInput => ({
  system: visibleSystems(person),
  revisions: { some: visibleOfferRevisions(person) },
});
