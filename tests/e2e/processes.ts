import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';

interface Row {
  readonly pid: number;
  readonly parent: number;
  /** `Z` once it ended and nobody has asked how. */
  readonly state: string;
}

/** One row for each running process, from where the system keeps them, else from its command. */
function allProcesses(): readonly Row[] {
  const lines = existsSync('/proc/self/stat')
    ? readdirSync('/proc')
        .filter((name) => /^\d+$/.test(name))
        .map((pid) => {
          try {
            // "pid (name) state parent …"; the name may hold spaces and brackets.
            const rest = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ').at(-1) ?? '';
            const [state, parent] = rest.split(' ');
            return `${pid} ${parent} ${state}`;
          } catch {
            return '0 0 Z';
          }
        })
    : spawnSync('ps', ['-A', '-o', 'pid=,ppid=,stat='], { encoding: 'utf8' }).stdout.trim().split('\n');
  return lines.map((line) => {
    const [pid, parent, state] = line.trim().split(/\s+/);
    return { pid: Number(pid), parent: Number(parent), state: state ?? '' };
  });
}

/** The process with this number and all that it started, directly or not, as far as they run. */
export function processesOf(pid: number): readonly number[] {
  const rows = allProcesses().filter((row) => !row.state.startsWith('Z'));
  const below = (parent: number): readonly number[] =>
    rows.filter((row) => row.parent === parent).flatMap((row) => [row.pid, ...below(row.pid)]);
  return rows.some((row) => row.pid === pid) ? [pid, ...below(pid)] : [];
}
