import { addTo, type Counts } from './port-sets.js';

/** A port of which the parts behind it decide how much reaches through. */
export interface ContestedPort {
  /** Where it counts, by level. */
  readonly counts: readonly Counts[];
  /** By obstacle: the level that each class leaves; null where all of them leave the highest. */
  readonly levels: readonly (Uint8Array | null)[];
  /** By obstacle and level from 1 on: the classes that leave as much. */
  readonly masks: readonly (readonly Uint32Array[] | null)[];
}

/** The ports of one class of the host. */
export interface HostPorts {
  /** Of the ports that nothing contests. */
  readonly sure: Counts;
  readonly contested: readonly ContestedPort[];
}

/** By obstacle: the words of its present classes, where they begin, or the one class to look at. */
export interface Behind {
  readonly state: Uint32Array;
  readonly offsets: Int32Array;
  /** Class by obstacle; −1: any of the present ones. */
  readonly fixed: Int32Array;
}

const hasAny = (mask: Uint32Array, state: Uint32Array, offset: number): boolean => {
  for (let w = 0; w < mask.length; w++)
    if (((mask[w] as number) & (state[offset + w] as number)) !== 0) return true;
  return false;
};

const hasAll = (mask: Uint32Array, state: Uint32Array, offset: number): boolean => {
  for (let w = 0; w < mask.length; w++)
    if ((~(mask[w] as number) & (state[offset + w] as number)) !== 0) return false;
  return true;
};

const levelOf = (port: ContestedPort, behind: Behind, isMet: typeof hasAny): number => {
  let level = port.counts.length - 1;
  for (let o = 0; o < port.masks.length && level > 0; o++) {
    const masks = port.masks[o];
    if (masks == null) continue;
    const fixed = behind.fixed[o] as number;
    if (fixed >= 0) level = Math.min(level, port.levels[o]?.[fixed] as number);
    else
      while (level > 0 && !isMet(masks[level - 1] as Uint32Array, behind.state, behind.offsets[o] as number))
        level--;
  }
  return level;
};

const countWith = (
  ports: HostPorts,
  behind: Behind,
  { into, isMet }: { into: Counts; isMet: typeof hasAny },
): Counts => {
  into.set(ports.sure);
  for (const port of ports.contested) addTo(into, port.counts[levelOf(port, behind, isMet)] as Counts, 1);
  return into;
};

/** Ports where each obstacle leaves as much as one of its present classes does. */
export const mostPorts = (ports: HostPorts, behind: Behind, into: Counts): Counts =>
  ports.contested.length === 0 ? ports.sure : countWith(ports, behind, { into, isMet: hasAny });

/** Ports where each obstacle leaves no more than every present class does. */
export const leastPorts = (ports: HostPorts, behind: Behind, into: Counts): Counts =>
  ports.contested.length === 0 ? ports.sure : countWith(ports, behind, { into, isMet: hasAll });

/** Ports that are there whatever stands behind them. */
export const certainPorts = ({ sure, contested }: HostPorts): Counts => {
  const counts = Int32Array.from(sure);
  for (const port of contested) addTo(counts, port.counts[0] as Counts, 1);
  return counts;
};

/** Ports that would be there with nothing behind them. */
export const openPorts = ({ sure, contested }: HostPorts): Counts => {
  const counts = Int32Array.from(sure);
  for (const port of contested) addTo(counts, port.counts[port.counts.length - 1] as Counts, 1);
  return counts;
};
