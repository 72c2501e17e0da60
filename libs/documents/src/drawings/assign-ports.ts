import { type CoverPort, type SlotName, slotPath, type SlotPath } from '@flangewise/model';
import type { DrawnPort, ItemsBySlot } from './drawing-model.js';

/** Slots that may sit on the cover, the hardest to place first. */
const portSlots = [
  'relief',
  'coil',
  'charging',
  'condenser',
  'sightGlass',
  'gasInlet',
  'sampling',
  'temperatureProbe',
  'processProbe',
  'pressureGauge',
] as const satisfies readonly SlotName[];

interface Assignment {
  readonly set: number;
  readonly given?: Readonly<Record<string, SlotPath>> | undefined;
}

/**
 * Cover ports with what sits on them. Without a given assignment each slot takes the smallest free port that
 * is large enough: enough to show where things are, never a proof that they fit.
 */
export const assignPorts = (
  ports: readonly CoverPort[],
  items: ItemsBySlot,
  { set, given }: Assignment,
): DrawnPort[] => {
  const taken = new Map<string, SlotPath>(Object.entries(given ?? {}));
  if (given === undefined) {
    for (const slot of portSlots) {
      for (const size of items[slot]?.portsM ?? []) {
        const free = ports
          .filter((port) => !taken.has(port.name) && port.diameterM >= size - 1e-9)
          .toSorted((a, b) => a.diameterM - b.diameterM)[0];
        if (free !== undefined) taken.set(free.name, slotPath(slot, set));
      }
    }
  }
  return ports.map((port) => ({
    name: port.name,
    diameter: port.diameterM * 1000,
    circle: port.boltCircleM * 1000,
    angle: port.angleDeg,
    slot: taken.get(port.name) ?? null,
  }));
};
