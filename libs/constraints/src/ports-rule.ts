import type { CoverPort, Item, ItemOf, SlotName } from '@flangewise/model';
import type { RuleHead } from './rule.js';

/** What stands below the ports, and the largest diameter that it leaves at one [m]. */
export interface Obstacle {
  readonly slot: SlotName;
  readonly reads: readonly string[];
  leaves(port: CoverPort, part: Item, bore: number): number;
}

export const obstacle = <S extends SlotName, const A extends readonly (keyof ItemOf<S>)[]>(declaration: {
  readonly slot: S;
  readonly reads: A & readonly string[];
  readonly leaves: (port: CoverPort, part: Pick<ItemOf<S>, A[number]>, bore: number) => number;
}): Obstacle => ({
  slot: declaration.slot,
  reads: declaration.reads,
  leaves: (port, part, bore) => declaration.leaves(port, part as ItemOf<S>, bore),
});

/** Every part that needs ports of the cover finds one that takes it, and as many stay free as are asked for. */
export interface PortsRule extends RuleHead<readonly ['freePortsM']> {
  readonly form: 'ports';
  readonly host: 'cover';
  readonly users: readonly SlotName[];
  /** Whether a part reaches through its ports to what stands below them. */
  reachesDown(part: Item): boolean;
  /** The largest that reaches down through a port, whatever stands below it [m]. */
  through(port: CoverPort): number;
  readonly obstacles: readonly Obstacle[];
  readonly met: string;
}

export const portsRule = (declaration: Omit<PortsRule, 'form'>): PortsRule => ({
  form: 'ports',
  ...declaration,
});
