import type { AuditProgress } from '@flangewise/constraints';

/** How far an audit is, as whole numbers that the threads of a process share: what it does, how much is done, of how much. */
export type AuditMeter = Int32Array<SharedArrayBuffer>;

const doings = ['rules', 'inquiries'] as const satisfies readonly AuditProgress['doing'][];

export const createAuditMeter = (): AuditMeter =>
  new Int32Array(new SharedArrayBuffer(3 * Int32Array.BYTES_PER_ELEMENT));

export function writeProgress(meter: AuditMeter, { doing, done, of }: AuditProgress): void {
  [doings.indexOf(doing), done, of].forEach((value, place) => Atomics.store(meter, place, value));
}

export function readProgress(meter: AuditMeter): AuditProgress {
  const [doing = 0, done = 0, of = 0] = [0, 1, 2].map((place) => Atomics.load(meter, place));
  return { doing: doings[doing] ?? 'rules', done, of };
}
