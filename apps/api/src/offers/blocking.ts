import { ReleaseKind } from '../generated/enums.js';
import { z } from 'zod';

/**
 * What keeps an offer from being sent, each a sentence: `always` until the system or the inquiry changes, the others until an
 * approver releases them.
 */
export const blockingSchema = z.object({
  always: z.array(z.string()),
  discount: z.array(z.string()),
  special: z.array(z.string()),
});

export type Blocking = z.output<typeof blockingSchema>;

const releaseKinds = Object.values(ReleaseKind);

/** The sentences that still stand after these releases. */
export const standing = (blocking: Blocking, released: readonly ReleaseKind[]): readonly string[] => [
  ...blocking.always,
  ...releaseKinds.filter((kind) => !released.includes(kind)).flatMap((kind) => blocking[kind]),
];

/** The releases that an offer waits for. */
export const waitsFor = (blocking: Blocking, released: readonly ReleaseKind[]): readonly ReleaseKind[] =>
  releaseKinds.filter((kind) => blocking[kind].length > 0 && !released.includes(kind));
