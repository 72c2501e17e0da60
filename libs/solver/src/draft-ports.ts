import { wordsFor } from './bits.js';
import type { ClassMap } from './class-map.js';
import { classMap } from './class-map.js';
import type { ContestedPort, HostPorts } from './host-ports.js';
import { addTo, type Counts, PortSets } from './port-sets.js';
import type { BoundPorts } from './ports-constraint.js';
import type { PortsSpec, PortUser } from './problem.js';

const setsOf = (spec: PortsSpec): PortSets =>
  new PortSets([
    ...spec.users.flatMap(({ needs, reaches }) =>
      needs.flatMap((list, value) => Array.from(list, (size) => ({ size, reaches: reaches?.[value] === 1 }))),
    ),
    ...Array.from(spec.spare ?? [], (size) => ({ size, reaches: false })),
  ]);

/** What a value of a user needs less what it gives. */
const balanceOf = (user: PortUser, value: number, sets: PortSets): Counts => {
  const counts = sets.needs(user.needs[value] as Float64Array, user.reaches?.[value] === 1);
  for (const size of user.gives?.[value] ?? []) addTo(counts, sets.port(size, 0), -1);
  return counts;
};

/** By obstacle and class: the level that it leaves at each port of each class of the host. */
type Levels = readonly (readonly (readonly Uint8Array[])[])[];

interface Hosts {
  readonly classOf: ArrayLike<number>;
  /** One value of each class. */
  readonly values: readonly number[];
}

const hostsOf = (spec: PortsSpec): Hosts => {
  const classOf = spec.behind?.hostClassOf ?? Uint16Array.from(spec.hostPorts.keys());
  const values: number[] = [];
  for (const [value, c] of classOf.entries()) values[c] ??= value;
  return { classOf, values };
};

/** The highest level of each port of each class of the host, with the obstacle of least hindrance behind it. */
const topsOf = (spec: PortsSpec, sets: PortSets, levels: Levels): readonly Uint8Array[] =>
  hostsOf(spec).values.map((value, host) =>
    Uint8Array.from(spec.hostPorts[value] as Float64Array, (size, p) => {
      const own = sets.levelOf(Math.min(size, spec.through?.[value]?.[p] ?? size));
      return Math.min(own, ...levels.map((of) => Math.max(...of.map((list) => list[host]?.[p] as number))));
    }),
  );

const contestedPort = (
  { size, top, by }: { size: number; top: number; by: readonly Uint8Array[] },
  sets: PortSets,
): ContestedPort => {
  const levels = by.map((list) => (list.every((level) => level >= top) ? null : list));
  return {
    counts: Array.from({ length: top + 1 }, (_, level) => sets.port(size, level)),
    levels,
    masks: levels.map((list) =>
      list === null
        ? null
        : Array.from({ length: top }, (_, at) => {
            const mask = new Uint32Array(wordsFor(list.length));
            for (const [c, level] of list.entries())
              if (level > at) mask[c >>> 5] = (mask[c >>> 5] as number) | (1 << (c & 31));
            return mask;
          }),
    ),
  };
};

/** What tells the values of an obstacle apart: the levels that they leave. */
const obstacleKeys = (spec: PortsSpec, levels: Levels, tops: readonly Uint8Array[]): readonly string[][] =>
  (spec.behind?.obstacles ?? []).map(({ classOf }, o) => {
    const keys = (levels[o] ?? []).map((list) =>
      list
        .map((at, host) => at.map((level, p) => Math.min(level, tops[host]?.[p] as number)).join())
        .join(';'),
    );
    return Array.from(classOf, (c) => keys[c] as string);
  });

const levelsOf = (spec: PortsSpec, sets: PortSets): Levels =>
  (spec.behind?.obstacles ?? []).map(({ classOf, leaves }) => {
    const used = new Set(classOf);
    return leaves.map((list, c) =>
      list.map((at) => Uint8Array.from(at, (through) => (used.has(c) ? sets.levelOf(through) : 0))),
    );
  });

/** A user, an obstacle, or a variable that is both. */
interface Place {
  readonly map: ClassMap;
  readonly rows: readonly Counts[];
  /** One value of each class. */
  readonly examples: readonly number[];
}

const placesOf = (spec: PortsSpec, sets: PortSets, keys: readonly string[][]): readonly Place[] => {
  const obstacles = spec.behind?.obstacles ?? [];
  const variables = new Set([...spec.users, ...obstacles].map(({ variable }) => variable));
  return [...variables].map((variable) => {
    const user = spec.users.find((u) => u.variable === variable);
    const behind = keys[obstacles.findIndex((o) => o.variable === variable)];
    const size = user?.needs.length ?? behind?.length ?? 0;
    const rows = Array.from({ length: size }, (_, value) =>
      user === undefined ? new Int32Array(sets.count) : balanceOf(user, value, sets),
    );
    const { map } = classMap(
      variable,
      rows.map((row, value) => `${String(row)} ${behind?.[value] ?? ''}`),
    );
    const examples = Array.from({ length: map.count }, (_, c) => map.classOf.indexOf(c));
    return { map, examples, rows: examples.map((value) => rows[value] as Counts) };
  });
};

/** The ports of each class of the host, and what tells the classes apart. */
const hostPortsOf = (
  spec: PortsSpec,
  sets: PortSets,
  { levels, tops, places }: { levels: Levels; tops: readonly Uint8Array[]; places: readonly Place[] },
): readonly { readonly ports: HostPorts; readonly key: string }[] => {
  const examples = (spec.behind?.obstacles ?? []).map(({ variable, classOf }) =>
    (places.find((p) => p.map.variable === variable)?.examples ?? []).map((v) => classOf[v] as number),
  );
  return hostsOf(spec).values.map((value, host) => {
    const sure = new Int32Array(sets.count);
    const contested: { key: string; port: ContestedPort }[] = [];
    for (const [p, size] of (spec.hostPorts[value] as Float64Array).entries()) {
      const top = tops[host]?.[p] as number;
      const by = examples.map((classes, o) =>
        Uint8Array.from(classes, (c) => Math.min(top, levels[o]?.[c]?.[host]?.[p] as number)),
      );
      if (by.every((list) => list.every((level) => level === top))) addTo(sure, sets.port(size, top), 1);
      else {
        const port = contestedPort({ size, top, by }, sets);
        contested.push({ key: `${port.counts.map(String).join('/')} ${by.map(String).join('/')}`, port });
      }
    }
    contested.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
    return {
      ports: { sure, contested: contested.map(({ port }) => port) },
      key: [String(sure), ...contested.map(({ key }) => key)].join(' | '),
    };
  });
};

/** Works the needs and the ports out as counts over sets of ports. */
export function draftPorts(spec: PortsSpec): {
  readonly maps: readonly ClassMap[];
  readonly bound: Omit<BoundPorts, 'views' | 'sizes'>;
} {
  const sets = setsOf(spec);
  const levels = levelsOf(spec, sets);
  const tops = topsOf(spec, sets, levels);
  const places = placesOf(spec, sets, obstacleKeys(spec, levels, tops));
  const hosts = hostPortsOf(spec, sets, { levels, tops, places });
  const { classOf } = hostsOf(spec);
  const host = classMap(
    spec.host,
    Array.from(classOf, (c) => hosts[c]?.key as string),
  ).map;
  const open = places.filter((place) => place.map.count > 1);
  const fixedNeeds = sets.needs(spec.spare ?? [], false);
  for (const { map, rows } of places) if (map.count === 1) addTo(fixedNeeds, rows[0] as Counts, 1);
  return {
    maps: [...open.map((place) => place.map), ...(host.count > 1 ? [host] : [])],
    bound: {
      needs: open.map(({ rows }) => rows),
      fixedNeeds,
      hosts: Array.from(
        { length: host.count },
        (_, c) => hosts[classOf[host.classOf.indexOf(c)] as number]?.ports as HostPorts,
      ),
      obstaclesAt: (spec.behind?.obstacles ?? []).map((o) =>
        open.findIndex((place) => place.map.variable === o.variable),
      ),
    },
  };
}
