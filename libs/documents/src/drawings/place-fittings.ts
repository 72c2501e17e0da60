import type { SlotName, SlotPath } from '@flangewise/model';
import { parseSlotPath } from '@flangewise/model';
import type { DrawnPort } from './drawing-model.js';
import type { SetLayout } from './set-layout.js';

/** A port of the cover as the section shows it. */
export interface PlacedPort {
  readonly port: DrawnPort;
  readonly slot: SlotPath | null;
  readonly kind: SlotName | null;
  /** Distance of its axis from the axis of the vessel, right positive [mm]. */
  readonly x: number;
  /** Turned into the plane of the section and cut. */
  readonly cut: boolean;
  /** Which of several ports of one slot, from 0. */
  readonly turn: number;
}

const kindOf = (slot: SlotPath | null): SlotName | null =>
  slot === null ? null : (parseSlotPath(slot)?.slot ?? null);

/** Where a port would show without turning: front is towards the viewer, angles run clockwise from above. */
const projected = (port: DrawnPort): number => (-port.circle / 2) * Math.sin((port.angle * Math.PI) / 180);

/** The nearest free place to the wanted one, on either side of the shaft and inside the wall. */
const freePlace = (
  wanted: number,
  taken: readonly PlacedPort[],
  lane: { low: number; high: number; gap: number },
): number => {
  const steps = 24;
  const places = Array.from({ length: steps + 1 }, (_, i) => lane.low + ((lane.high - lane.low) * i) / steps);
  const free = [...places, ...places.map((x) => -x)].filter((x) =>
    taken.every((other) => Math.abs(other.x - x) >= lane.gap),
  );
  return free.toSorted((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))[0] ?? wanted;
};

/**
 * Places of the ports in the section: relief turned into the plane on the right, the first port of coil or
 * gas on the left, as ISO 128-3 allows for holes on a circle; the others behind the plane, moved
 * sideways where they would hide each other.
 */
export const placeFittings = (layout: SetLayout): PlacedPort[] => {
  const ports = (layout.set.cover?.ports ?? []).filter((port) => port.circle > 0 && port.slot !== null);
  const reach = (port: DrawnPort): number => Math.min(port.circle / 2, layout.inner - port.diameter / 2 - 1);
  const placed: PlacedPort[] = [];
  const put = (port: DrawnPort, x: number, isCut: boolean): void => {
    const turn = placed.filter((other) => other.slot === port.slot).length;
    placed.push({ port, slot: port.slot, kind: kindOf(port.slot), x, cut: isCut, turn });
  };
  const right = ports.find((port) => kindOf(port.slot) === 'relief');
  if (right !== undefined) put(right, reach(right), true);
  const left = (['coil', 'charging', 'gasInlet', 'sampling', 'temperatureProbe'] as const)
    .map((kind) => ports.find((port) => port !== right && kindOf(port.slot) === kind))
    .find((port) => port !== undefined);
  if (left !== undefined) put(left, -reach(left), true);
  for (const port of ports) {
    if (port === right || port === left) continue;
    const lane = {
      low: layout.shaftRadius + port.diameter * 0.5 + 2 * layout.detail,
      high: reach(port),
      gap: port.diameter * 0.8 + 3 * layout.detail,
    };
    put(port, lane.high > lane.low ? freePlace(projected(port), placed, lane) : projected(port), false);
  }
  return placed;
};
