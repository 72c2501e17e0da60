import type { Item, ItemOf, SlotName } from '@flangewise/model';
import type { ConstraintSpec } from '@flangewise/solver';
import { type Classes, classesOf } from './classes.js';
import type { Conditions } from './conditions.js';
import type { Obstacle, PortsRule } from './ports-rule.js';

type Locate = (slot: SlotName) => { readonly variable: number; readonly options: readonly (Item | null)[] };

const isCover = (item: Item | null): item is ItemOf<'cover'> => item?.slot === 'cover';

/** What an obstacle leaves, for each class of it and of the covers, at each port. */
const obstacleOf = (obstacle: Obstacle, covers: Classes, locate: Locate) => {
  const { variable, options } = locate(obstacle.slot);
  const { classOf, representatives } = classesOf(options, obstacle.reads);
  const leaves = representatives.map((part) =>
    covers.representatives.map((cover) =>
      isCover(cover)
        ? Float64Array.from(cover.ports, (port) =>
            part === null ? Infinity : obstacle.leaves(port, part, cover.bore),
          )
        : new Float64Array(),
    ),
  );
  return { variable, classOf, leaves };
};

export const tabulatePorts = (
  id: string,
  rule: PortsRule,
  at: { conditions: Pick<Conditions, 'freePortsM'>; locate: Locate },
): ConstraintSpec => {
  const { variable, options } = at.locate(rule.host);
  const covers = classesOf(options, ['ports', 'bore']);
  const portsOf = (item: Item | null) => (isCover(item) ? item.ports : []);
  return {
    kind: 'ports',
    id,
    host: variable,
    hostPorts: options.map((o) => Float64Array.from(portsOf(o), (port) => port.diameterM)),
    through: options.map((o) => Float64Array.from(portsOf(o), (port) => rule.through(port))),
    users: rule.users.map((slot) => {
      const user = at.locate(slot);
      return {
        variable: user.variable,
        needs: user.options.map((o) => Float64Array.from(o?.portsM ?? [])),
        reaches: Uint8Array.from(user.options, (o) => (o !== null && rule.reachesDown(o) ? 1 : 0)),
        gives: user.options.map((o) => Float64Array.from(o?.givesPortsM ?? [])),
      };
    }),
    spare: Float64Array.from(at.conditions.freePortsM ?? []),
    behind: {
      hostClassOf: covers.classOf,
      obstacles: rule.obstacles.map((obstacle) => obstacleOf(obstacle, covers, at.locate)),
    },
  };
};
