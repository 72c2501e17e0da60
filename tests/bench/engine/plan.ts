import type { SizeName } from './catalogue.js';
import type { Limits } from './engine-run.js';
import type { ShapeName } from './make-problem.js';
import type { PeerName } from './subject.js';

/** What is run of one size and shape. */
export interface Plan {
  readonly size: SizeName;
  readonly shape: ShapeName;
  readonly seeds: readonly number[];
  /** Also the seeds drawn for this run. */
  readonly drawn: boolean;
  readonly limits: Limits;
  readonly engineMs: number;
  readonly peers: readonly PeerName[];
  /** Seeds at which the peers take part, and how long each may take. */
  readonly peerSeeds: number;
  readonly peerMs: number;
}

const ten = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const both: readonly PeerName[] = ['logic-solver', 'z3-solver'];

export const plans: readonly Plan[] = [
  {
    ...{
      size: 'S',
      shape: 'plain',
      seeds: ten,
      drawn: true,
      limits: { walks: 8, narrowMs: 2000, bestMs: 5000 },
    },
    ...{ engineMs: 20_000, peers: both, peerSeeds: 13, peerMs: 6000 },
  },
  {
    ...{
      size: 'M',
      shape: 'plain',
      seeds: ten,
      drawn: true,
      limits: { walks: 2, narrowMs: 3000, bestMs: 3000 },
    },
    ...{ engineMs: 60_000, peers: both, peerSeeds: 3, peerMs: 20_000 },
  },
  {
    ...{
      size: 'L',
      shape: 'plain',
      seeds: [1],
      drawn: false,
      limits: { walks: 1, narrowMs: 5000, bestMs: 10_000 },
    },
    ...{ engineMs: 120_000, peers: [], peerSeeds: 0, peerMs: 0 },
  },
  {
    ...{
      size: 'S',
      shape: 'full',
      seeds: [1, 2],
      drawn: false,
      limits: { walks: 4, narrowMs: 3000, bestMs: 5000 },
    },
    ...{ engineMs: 60_000, peers: both, peerSeeds: 1, peerMs: 10_000 },
  },
  {
    ...{
      size: 'M',
      shape: 'full',
      seeds: [1],
      drawn: false,
      limits: { walks: 1, narrowMs: 5000, bestMs: 5000 },
    },
    ...{ engineMs: 60_000, peers: both, peerSeeds: 1, peerMs: 15_000 },
  },
];
