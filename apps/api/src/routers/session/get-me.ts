import { roleTitles } from '../../auth/roles.js';
import { publicProcedure } from '../../trpc/procedures.js';
import { getMeOutput } from './get-me.schema.js';

/** Who is signed in. */
export const getMe = publicProcedure.output(getMeOutput).query(async ({ ctx }) => {
  if (ctx.person === undefined) return null;
  const { id, name, email, role, clientId } = ctx.person;
  const client =
    clientId === null
      ? null
      : await ctx.database.client.findUnique({ where: { id: clientId }, select: { id: true, name: true } });
  return { id, name, email, role, roleTitle: roleTitles[role], clientId, client };
});
