import type { Prisma } from '../generated/client.js';

/** A document as a JSON column takes it; the schemas of libs/model allow nothing that JSON has not. */
export const storable = (document: object): Prisma.InputJsonValue => document as Prisma.InputJsonValue;
