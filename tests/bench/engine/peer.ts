import type { Choice } from '@flangewise/solver';
import type { BooleanEncoding } from './boolean-encoding.js';

/** A general-purpose solver that has loaded an encoded problem. */
export interface Peer {
  /** The Booleans that are true in some solution in which these are; null where there is none. */
  solve(assumed: readonly number[]): Promise<ReadonlySet<number> | null>;
  /** Cost of the cheapest solution; null where there is none. */
  least(): Promise<number | null>;
  close(): void;
}

/** Makes a peer with an encoded problem loaded. */
export type PeerMaker = (encoding: BooleanEncoding) => Promise<Peer>;

/** The valid values of every variable under some choices: each solution shows a value of each variable. */
export async function validBy(
  peer: Peer,
  { chosen, merged }: BooleanEncoding,
  choices: readonly Choice[],
): Promise<Uint8Array[]> {
  const assumed = choices.map(
    ({ variable, value }) => chosen[variable]?.[merged[variable]?.groupOf[value] as number] as number,
  );
  const shown = new Set<number>();
  for (const literal of chosen.flat()) {
    if (shown.has(literal)) continue;
    const solution = await peer.solve([...assumed, literal]);
    for (const own of chosen.flat()) if (solution?.has(own)) shown.add(own);
  }
  const valueOf = new Map(choices.map((c) => [c.variable, c.value]));
  return merged.map(({ groupOf }, x) =>
    Uint8Array.from(groupOf, (g, v) => {
      const own = valueOf.get(x);
      return shown.has(chosen[x]?.[g] as number) && (own === undefined || own === v) ? 1 : 0;
    }),
  );
}
