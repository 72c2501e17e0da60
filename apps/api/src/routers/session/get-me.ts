import { roleTitles } from '../../auth/roles.js';
import { signedInProcedure } from '../../trpc/procedures.js';
import { getMeOutput } from './get-me.schema.js';

/** Who is signed in. */
export const getMe = signedInProcedure.output(getMeOutput).query(async ({ ctx }) => {
  const { name, email, role, clientId } = ctx.person;
  const client =
    clientId === null
      ? null
      : await ctx.database.client.findUnique({ where: { id: clientId }, select: { id: true, name: true } });
  return { name, email, role, roleTitle: roleTitles[role], client };
});
