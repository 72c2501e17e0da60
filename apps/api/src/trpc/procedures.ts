import { initTRPC } from '@trpc/server';
import { Role, roleTitles } from '../auth/roles.js';
import { formatError } from '../errors/format-error.js';
import { refuse } from '../errors/refusal.js';
import type { Context } from './context.js';

const trpc = initTRPC.context<Context>().create({
  errorFormatter: ({ error, path, ctx }) => formatError(error, path, ctx?.request ?? 'unknown'),
});

export const router = trpc.router;

/** Open to everybody, signed in or not. */
export const publicProcedure = trpc.procedure;

/** Open to everybody who is signed in; `ctx.person` says who. */
export const signedInProcedure = trpc.procedure.use(({ ctx, next }) => {
  if (ctx.person === undefined) throw refuse('SIGN_IN_REQUIRED', {});
  return next({ ctx: { person: ctx.person } });
});

function procedureFor(...allowed: readonly Role[]) {
  return signedInProcedure.use(({ ctx, next }) => {
    const { role } = ctx.person;
    if (!allowed.includes(role))
      throw refuse('ROLE_NOT_ALLOWED', {
        allowed: allowed.map((one) => roleTitles[one]).join(', '),
        given: roleTitles[role],
      });
    return next();
  });
}

/** The maker's people who have to do with inquiries, systems and offers. */
const houseRoles: readonly Role[] = [Role.applications_engineer, Role.sales_support, Role.approver];
export const houseProcedure = procedureFor(...houseRoles);
/** Whoever has to do with inquiries, systems and offers: all but the catalogue keeper. Services show a customer his own. */
export const jobRoles: readonly Role[] = [...houseRoles, Role.customer];
export const jobProcedure = procedureFor(...jobRoles);
/** Enters inquiries and saves the systems that answer them: the engineer for anybody, a customer for himself. */
export const inquirerProcedure = procedureFor(Role.applications_engineer, Role.customer);
export const engineerProcedure = procedureFor(Role.applications_engineer);
/** Issues and prices offers again: sales support, and the engineer whose offers they are. */
export const salesProcedure = procedureFor(Role.sales_support, Role.applications_engineer);
export const approverProcedure = procedureFor(Role.approver);
/** Enters items, prices and rules as data, and releases catalogues. */
export const keeperProcedure = procedureFor(Role.catalogue_keeper);
/** Reads every revision of the catalogue with its prices: all of the maker's people. */
export const catalogueReaders: readonly Role[] = [Role.catalogue_keeper, ...houseRoles];
export const catalogueReaderProcedure = procedureFor(...catalogueReaders);
