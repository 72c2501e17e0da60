import { type Item, type ItemOf, type SlotName, slots } from '@flangewise/model';
import { assignPorts, type OpenPort, type PortAssignment, type PortUser, takes } from './assign-ports.js';
import type { Chosen } from './chosen.js';
import { isAtMost } from './compare.js';
import type { PortsRule } from './ports-rule.js';
import { shownQuantity } from './shown-quantity.js';

/** Room for everything that is asked for: a port that nobody uses. */
export interface SparePort extends PortUser {
  readonly isSpare: true;
}

/** The cover of one set with everything that wants a port of it and everything that stands below. */
export interface SetPorts {
  readonly cover: ItemOf<'cover'>;
  readonly users: readonly (PortUser | SparePort)[];
  readonly below: readonly { readonly slot: SlotName; readonly item: Item }[];
  readonly assignment: PortAssignment;
}

const spareUsers = (sizes: readonly number[]): SparePort[] =>
  sizes.map((sizeM) => ({
    slot: 'cover',
    name: 'a port that stays free',
    sizeM,
    reachesDown: false,
    isSpare: true,
  }));

export const isSpare = (user: PortUser): user is SparePort => 'isSpare' in user;

const partUsers = (rule: PortsRule, chosen: Chosen): PortUser[] =>
  rule.users.flatMap((slot) => {
    const part = chosen(slot);
    if (part === null || part === undefined) return [];
    return part.portsM.map((sizeM, k) => ({
      slot,
      name: part.name,
      sizeM,
      reachesDown: rule.reachesDown(part),
      ...(k === 0 && part.givesPortsM !== undefined ? { givesM: part.givesPortsM } : {}),
    }));
  });

const openPorts = (rule: PortsRule, cover: ItemOf<'cover'>, below: SetPorts['below']): OpenPort[] =>
  cover.ports.map((port) => ({
    name: port.name,
    diameterM: port.diameterM,
    throughM: Math.min(
      rule.through(port),
      ...rule.obstacles.flatMap((obstacle) =>
        below
          .filter(({ slot }) => slot === obstacle.slot)
          .map(({ item }) => obstacle.leaves(port, item, cover.bore)),
      ),
    ),
  }));

/** Who sits where on the cover of a set; undefined while no cover is chosen. */
export const setPortsOf = (
  rule: PortsRule,
  chosen: Chosen,
  freePortsM: readonly number[] = [],
): SetPorts | undefined => {
  const cover = chosen(rule.host);
  if (cover?.slot !== 'cover') return undefined;
  const users = [...partUsers(rule, chosen), ...spareUsers(freePortsM)];
  const below = rule.obstacles.flatMap(({ slot }) => {
    const item = chosen(slot);
    return item === null || item === undefined ? [] : [{ slot, item }];
  });
  return { cover, users, below, assignment: assignPorts(openPorts(rule, cover, below), users) };
};

const size = (metres: number): string => shownQuantity(metres, 'm');
const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

/** “N3 by pressure gauge”. */
const seatText = ({ port, sizeM, user }: PortAssignment['placed'][number]): string => {
  const reducer = isAtMost(sizeM, user.sizeM) ? '' : ` (reducer ${size(sizeM)} to ${size(user.sizeM)})`;
  return isSpare(user)
    ? `${port} to stay free`
    : `${port} by ${slots[user.slot].title.toLowerCase()}${reducer}`;
};

const byName = (a: string, b: string): number => a.localeCompare(b, 'en', { numeric: true });

/** Who takes which port, and which are left. */
export const seatsText = ({ assignment: { placed, free } }: SetPorts): string => {
  const seats = placed.filter(({ user }) => !isSpare(user)).map(seatText);
  const left = [
    ...free.map(({ name }) => name),
    ...placed.filter(({ user }) => isSpare(user)).map(({ port }) => port),
  ].sort(byName);
  const taken = seats.length === 0 ? '' : `Taken are ${list(seats)}. `;
  return `${taken}${left.length === 0 ? 'None is free.' : `Free: ${left.join(', ')}.`}`;
};

/** Parts below the cover that keep a part off ports that are large enough for it. */
export const hinderers = (rule: PortsRule, { cover, below, assignment }: SetPorts): readonly SlotName[] => {
  const reaching = assignment.unplaced.filter((user) => user.reachesDown);
  return below
    .filter(({ slot, item }) =>
      rule.obstacles.some(
        (obstacle) =>
          obstacle.slot === slot &&
          reaching.some((user) =>
            cover.ports.some(
              (port) =>
                isAtMost(user.sizeM, rule.through(port)) &&
                !isAtMost(user.sizeM, obstacle.leaves(port, item, cover.bore)),
            ),
          ),
      ),
    )
    .map(({ slot }) => slot);
};

/** Why one user finds no port: who holds those that would do, and what is in the way at the others. */
const reasonFor = (rule: PortsRule, ports: SetPorts, user: PortUser): string => {
  const { cover, below, assignment } = ports;
  const large = openPorts(rule, cover, []).filter((port) => isAtMost(user.sizeM, port.diameterM));
  if (large.length === 0) return `none of its ports is that large`;
  const upright = large.filter((port) => takes(port, user));
  if (upright.length === 0)
    return `${list(large.map((p) => p.name))} are tilted, and it reaches straight down`;
  const clear = openPorts(rule, cover, below).filter((port) => takes(port, user));
  const blocked = upright.filter(({ name }) => !clear.some((port) => port.name === name));
  const held = clear.flatMap(({ name }) => {
    const seat = assignment.placed.find(({ port }) => port === name);
    return seat === undefined ? [] : [seatText(seat)];
  });
  const names = hinderers(rule, ports).map(
    (slot) => below.find((one) => one.slot === slot)?.item.name ?? slot,
  );
  const inTheWay =
    blocked.length === 0
      ? ''
      : `at ${list(blocked.map((p) => p.name))} it would not stand clear of ${list(names)}`;
  const taken = held.length === 0 ? '' : `taken are ${list(held)}`;
  return [taken, inTheWay].filter((text) => text !== '').join('; ');
};

const alike = (user: PortUser): string => `${user.name} ${String(user.sizeM)}`;

/** Who finds no port, and why. */
export const lackText = (rule: PortsRule, ports: SetPorts): string => {
  const { cover, assignment } = ports;
  const first = new Map(assignment.unplaced.map((user) => [alike(user), user]));
  return [...first.values()]
    .map((user) => {
      const count = assignment.unplaced.filter((other) => alike(other) === alike(user)).length;
      const wanted = user.sizeM === 0 ? '' : ` (${size(user.sizeM)})`;
      return `${cover.name} has no port left for ${user.name}${wanted}${count > 1 ? `, ${String(count)} times` : ''}: ${reasonFor(rule, ports, user)}.`;
    })
    .join(' ');
};

/** Covers on which the same parts find ports: of the same bore, and as strong and of the same material where there are such. */
const otherCovers = (
  rule: PortsRule,
  { cover, users, below }: SetPorts,
  items: Iterable<Item>,
): readonly ItemOf<'cover'>[] => {
  const fitting: ItemOf<'cover'>[] = [];
  for (const item of items)
    if (
      item.slot === 'cover' &&
      item.id !== cover.id &&
      item.life !== 'discontinued' &&
      item.bore === cover.bore &&
      item.material === cover.material &&
      item.bushing === cover.bushing &&
      isAtMost(cover.rating?.maxPressurePaGauge ?? 0, item.rating?.maxPressurePaGauge ?? 0) &&
      assignPorts(openPorts(rule, item, below), users).unplaced.length === 0
    )
      fitting.push(item);
  return fitting;
};

const mostNamed = 3;

/** Which covers of the range would do instead. */
export const instead = (rule: PortsRule, ports: SetPorts, items: Iterable<Item>): string => {
  const covers = otherCovers(rule, ports, items);
  const { bore, material } = ports.cover;
  if (covers.length === 0)
    return `No other cover of bore ${String(bore)} in ${material} as strong has the ports: choose fewer or other parts, or ask for a special cover.`;
  const named = covers.slice(0, mostNamed).map(({ id, name }) => `${id} ${name}`);
  const more = covers.length - named.length;
  return `The ports are there on ${list([...named, ...(more > 0 ? [`${String(more)} more`] : [])])}.`;
};
