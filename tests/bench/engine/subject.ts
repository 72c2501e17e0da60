/**
 * One subject on one instance, in a process of its own: the arguments are JSON, each finished step a line of JSON, so that a
 * subject that is stopped leaves what it has done.
 */
import { encode } from './boolean-encoding.js';
import { digest } from './digest.js';
import { type Clock, type EngineRun, type Instance, type Limits, runEngine } from './engine-run.js';
import { logicPeer } from './logic-peer.js';
import { makeProblem } from './make-problem.js';
import { type PeerMaker, validBy } from './peer.js';
import { z3Peer } from './z3-peer.js';

export type PeerName = 'logic-solver' | 'z3-solver';

export interface Task {
  readonly subject: 'engine' | PeerName;
  readonly instance: Instance;
  readonly limits: Limits;
  /** Measure processor time, for machines that do other work meanwhile. */
  readonly processor: boolean;
  /** What the engine answered, for the peers to answer too. */
  readonly shared?: EngineRun['shared'];
}

/** Steps of a peer, in ms. */
export type PeerStep =
  | { readonly step: 'load'; readonly time: number }
  | { readonly step: 'edit'; readonly time: number; readonly valid: string }
  | { readonly step: 'best'; readonly time: number; readonly cost: number | null };

export interface EngineResult {
  readonly run: EngineRun;
  /** Bytes that the engine keeps after the edits, and by how much the process grew at most. */
  readonly kept: number;
  readonly grown: number;
}

const say = (line: PeerStep | EngineResult): void => {
  process.stdout.write(`${JSON.stringify(line)}\n`);
};

const clockOf = ({ processor }: Task): Clock =>
  processor
    ? () => {
        const { user, system } = process.cpuUsage();
        return (user + system) / 1000;
      }
    : () => performance.now();

const inUse = (): number => {
  globalThis.gc?.();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
};

function runOwn(task: Task): void {
  const before = { used: inUse(), resident: process.memoryUsage().rss };
  let kept = 0;
  const onEdited = (): void => {
    kept = inUse() - before.used;
  };
  const run = runEngine(task.instance, task.limits, { clock: clockOf(task), onEdited });
  // Of the resident memory the system knows the peak, in KiB.
  const grown = process.resourceUsage().maxRSS * 1024 - before.resident;
  say({ run, kept, grown });
}

async function runPeer(make: PeerMaker, task: Task): Promise<void> {
  const { instance, shared = [] } = task;
  const clock = clockOf(task);
  const problem = makeProblem(instance.size, instance.seed, instance.shape);
  let start = clock();
  const since = (): number => {
    const time = clock() - start;
    start = clock();
    return time;
  };
  const encoding = encode(problem);
  const peer = await make(encoding);
  say({ step: 'load', time: since() });
  for (const { choices } of shared) {
    const valid = digest(await validBy(peer, encoding, choices));
    say({ step: 'edit', time: since(), valid });
  }
  const cost = await peer.least();
  say({ step: 'best', time: since(), cost });
  peer.close();
}

const task = JSON.parse(process.argv[2] ?? '') as Task;
if (task.subject === 'engine') runOwn(task);
else await runPeer(task.subject === 'z3-solver' ? z3Peer : logicPeer, task);
process.exit(0);
