import type { CoverPort, SlotName } from '@flangewise/model';
import { isAtMost } from './compare.js';

export interface PortUser {
  readonly slot: SlotName;
  readonly name: string;
  /** Size of the port that it needs [m]. */
  readonly sizeM: number;
  /** It reaches through the port to what stands below it. */
  readonly reachesDown: boolean;
  /** Ports that it offers in turn, above its own [m]. */
  readonly givesM?: readonly number[];
}

/** A port of the cover, or one that a part on such a port offers. */
export interface OpenPort extends Pick<CoverPort, 'name' | 'diameterM'> {
  /** The largest that reaches down through it [m]. */
  readonly throughM: number;
}

export interface PortAssignment {
  readonly placed: readonly { readonly port: string; readonly sizeM: number; readonly user: PortUser }[];
  readonly unplaced: readonly PortUser[];
  readonly free: readonly OpenPort[];
}

export const takes = (port: OpenPort, user: PortUser): boolean =>
  isAtMost(user.sizeM, port.diameterM) && (!user.reachesDown || isAtMost(user.sizeM, port.throughM));

const byName = (a: string, b: string): number => a.localeCompare(b, 'en', { numeric: true });

/** The hardest first: what reaches down, then the largest. */
const byNeed = (a: PortUser, b: PortUser): number =>
  Number(b.reachesDown) - Number(a.reachesDown) || b.sizeM - a.sizeM;

/** Gives users ports, the smallest that will do first; one that stands in the way moves where it can (augmenting paths). */
const match = (ports: readonly OpenPort[], users: readonly PortUser[]) => {
  const holder = new Map<OpenPort, PortUser>();
  const place = (user: PortUser, seen: Set<OpenPort>): boolean => {
    const options = ports.filter((port) => takes(port, user));
    const free = options.find((port) => !holder.has(port) && !seen.has(port));
    if (free !== undefined) {
      holder.set(free, user);
      return true;
    }
    for (const port of options) {
      if (seen.has(port)) continue;
      seen.add(port);
      const held = holder.get(port);
      if (held === undefined || !place(held, seen)) continue;
      holder.set(port, user);
      return true;
    }
    return false;
  };
  const unplaced = users.filter((user) => !place(user, new Set()));
  return { holder, unplaced };
};

/**
 * Who sits where: a port takes its own size and, with a reducer, every smaller one, and what reaches down where it stands
 * clear. As many find a port as can at all; what cannot is named.
 */
export const assignPorts = (ports: readonly OpenPort[], users: readonly PortUser[]): PortAssignment => {
  const givers = users.filter(({ givesM }) => (givesM?.length ?? 0) > 0);
  // What gives ports is placed first, so that they bear its port's name; they are smaller than any that it needs.
  const offered = givers.flatMap((giver, g) =>
    (giver.givesM ?? []).map(
      (diameterM, k): OpenPort & { readonly of: PortUser; readonly suffix: string } => ({
        name: `given ${String(g)}.${String(k)}`,
        diameterM,
        throughM: Number.NEGATIVE_INFINITY,
        of: giver,
        suffix: String.fromCharCode(97 + k),
      }),
    ),
  );
  const all = [...ports, ...offered].sort(
    (a, b) => a.diameterM - b.diameterM || a.throughM - b.throughM || byName(a.name, b.name),
  );
  const { holder, unplaced } = match(all, [...users].sort(byNeed));
  const ownName = new Map([...holder].map(([port, user]) => [user, port.name]));
  const nameOf = (port: OpenPort): string => {
    const given = offered.find((one) => one === port);
    return given === undefined ? port.name : `${ownName.get(given.of) ?? ''}${given.suffix}`;
  };
  const isThere = (port: OpenPort): boolean => {
    const given = offered.find((one) => one === port);
    return given === undefined || ownName.has(given.of);
  };
  return {
    placed: [...holder]
      .map(([port, user]) => ({ port: nameOf(port), sizeM: port.diameterM, user }))
      .sort((a, b) => byName(a.port, b.port)),
    unplaced,
    free: all
      .filter((port) => !holder.has(port) && isThere(port))
      .map((port) => ({ ...port, name: nameOf(port) })),
  };
};
