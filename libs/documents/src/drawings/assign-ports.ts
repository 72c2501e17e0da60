import { type CoverPort, parseSlotPath, type SlotName, slotPath, type SlotPath } from '@flangewise/model';
import type { DrawnPort, ItemsBySlot } from './drawing-model.js';

/** Slots that may sit on the cover, the hardest to place first. */
const portSlots = [
  'relief',
  'coil',
  'portPiece',
  'charging',
  'condenser',
  'sightGlass',
  'gasInlet',
  'sampling',
  'temperatureProbe',
  'processProbe',
  'pressureGauge',
] as const satisfies readonly SlotName[];

/** The size of the one sort of port that a part needs, where this one is larger [mm]. */
const reducedTo = (port: CoverPort, items: ItemsBySlot, path: SlotPath): number | null => {
  const slot = parseSlotPath(path)?.slot;
  const sizes = [...new Set(slot === undefined ? [] : (items[slot]?.portsM ?? []))];
  const [size] = sizes;
  return size === undefined || sizes.length > 1 || size >= port.diameterM - 1e-9 ? null : size * 1000;
};

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
  return ports.map((port) => {
    const slot = taken.get(port.name) ?? null;
    return {
      name: port.name,
      diameter: port.diameterM * 1000,
      circle: port.boltCircleM * 1000,
      angle: port.angleDeg,
      tilt: port.tiltDeg,
      slot,
      reducedTo: slot === null ? null : reducedTo(port, items, slot),
      above: [...taken].flatMap(([name, path]) =>
        name.startsWith(port.name) && /^[a-z]$/.test(name.slice(port.name.length))
          ? [{ name, slot: path }]
          : [],
      ),
    };
  });
};
