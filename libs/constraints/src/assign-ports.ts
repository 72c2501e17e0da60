import type { CoverPort, SlotName } from '@flangewise/model';

export interface PortUser {
  readonly slot: SlotName;
  readonly name: string;
  /** Size of the port that it needs. */
  readonly sizeM: number;
}

export interface PortAssignment {
  readonly placed: readonly { readonly port: string; readonly user: PortUser }[];
  readonly unplaced: readonly PortUser[];
  readonly free: readonly string[];
}

/**
 * Who sits where. A port takes its own size and, with a reducer, every smaller one, so that giving the largest
 * user the smallest port that still takes it is optimal (threshold matching).
 */
export const assignPorts = (ports: readonly CoverPort[], users: readonly PortUser[]): PortAssignment => {
  const left = [...ports].sort(
    (a, b) => a.diameterM - b.diameterM || a.name.localeCompare(b.name, 'en', { numeric: true }),
  );
  const placed: { port: string; user: PortUser }[] = [];
  const unplaced: PortUser[] = [];
  for (const user of [...users].sort((a, b) => b.sizeM - a.sizeM)) {
    const index = left.findIndex((port) => port.diameterM >= user.sizeM);
    const [port] = index < 0 ? [] : left.splice(index, 1);
    if (port === undefined) unplaced.push(user);
    else placed.push({ port: port.name, user });
  }
  const byPort = [...placed].sort((a, b) => a.port.localeCompare(b.port, 'en', { numeric: true }));
  return { placed: byPort, unplaced, free: left.map((port) => port.name) };
};
