import { type ItemOf, slotNames, type SlotPath, slotPath } from '@flangewise/model';
import { assignPorts } from './assign-ports.js';
import type { DrawingInput, DrawingModel, DrawnSet, DrawnVessel, ItemsBySlot } from './drawing-model.js';
import { endOf } from './end-form.js';
import { hatchMaterialOf } from './hatch-material.js';

const mm = (metres: number): number => metres * 1000;
const orNull = <T, R>(value: T | undefined, read: (value: T) => R): R | null =>
  value === undefined ? null : read(value);

const drawnVessel = (vessel: ItemOf<'vessel'>): DrawnVessel => {
  const { geometry } = vessel;
  const radius = mm(geometry.innerDiameterM) / 2;
  return {
    construction: vessel.construction,
    innerDiameter: 2 * radius,
    cylinderLength: mm(geometry.cylinderLengthM),
    wall: mm(geometry.wallThicknessM),
    endForm: geometry.endForm,
    endWall: mm(geometry.endThicknessM),
    rimDiameter: mm(geometry.flangeOuterDiameterM),
    rimHeight: mm(geometry.flangeHeightM),
    body: hatchMaterialOf(vessel.construction === 'lined' ? (vessel.carrier ?? '1.4404') : vessel.material),
    depth:
      mm(geometry.cylinderLengthM) +
      endOf(geometry.endForm, { radius, top: 0, wall: mm(geometry.endThicknessM) }).depth,
    jacketGap: orNull(vessel.jacket ?? undefined, (jacket) => mm(jacket.gapM)),
    bottomPort: orNull(vessel.bottomPortM ?? undefined, mm),
  };
};

const internals = (items: ItemsBySlot) => ({
  stirrer: orNull(items.stirrer, (stirrer) => ({
    impeller: stirrer.impeller,
    diameter: mm(stirrer.diameterM),
    bladeWidth: mm(stirrer.bladeWidthM),
    bladeCount: stirrer.bladeCount,
    shaftDiameter: mm(stirrer.shaftDiameterM),
  })),
  shaft: orNull(items.shaft, (shaft) => ({ length: mm(shaft.lengthM), diameter: mm(shaft.diameterM) })),
  baffles: orNull(items.baffles, (baffles) => ({ count: baffles.count, width: mm(baffles.widthM) })),
  coil: orNull(items.coil, (coil) => ({
    tube: mm(coil.tubeDiameterM),
    diameter: mm(coil.coilDiameterM),
    turns: coil.turns,
    body: hatchMaterialOf(coil.material),
  })),
  basket: items.basket !== undefined,
});

const attachments = (items: ItemsBySlot) => ({
  probe: items.temperatureProbe?.kind ?? null,
  relief: orNull(items.relief, (relief) => ({ bore: mm(2 * Math.sqrt(relief.areaM2 / Math.PI)) })),
  vent: orNull(items.ventLine, (vent) => ({ diameter: mm(vent.diameterM) })),
  gasInlet: items.gasInlet?.kind ?? null,
  sampling: items.sampling !== undefined,
  gauge: items.pressureGauge !== undefined,
  sightGlass: orNull(items.sightGlass, (glass) => ({ diameter: mm(glass.diameterM) })),
  charging: items.charging?.kind ?? null,
  condenser: items.condenser !== undefined,
  processProbe: items.processProbe !== undefined,
  bottomValve: orNull(items.bottomValve, (valve) => ({ kind: valve.kind, diameter: mm(valve.diameterM) })),
  shield: orNull(items.shield, (shield) => ({
    diameter: mm(shield.maxDiameterM),
    height: mm(shield.maxHeightM),
  })),
});

const drawnSet = (given: DrawingInput['sets'][number], index: number): DrawnSet | undefined => {
  const { items } = given;
  if (items.vessel === undefined) return undefined;
  return {
    index,
    label: given.label ?? null,
    count: given.count ?? 1,
    vessel: drawnVessel(items.vessel),
    levels: orNull(given.levels, ({ coldM, hotM }) => ({ cold: mm(coldM), hot: mm(hotM) })),
    cover: orNull(items.cover, (cover) => ({
      thickness: mm(cover.thicknessM),
      lined: cover.construction === 'lined',
      body: hatchMaterialOf(cover.construction === 'lined' ? '1.4404' : cover.material),
      ports: assignPorts(cover.ports, items, { set: index, given: given.ports }),
    })),
    closure: orNull(items.closure, (closure) => ({
      kind: closure.kind,
      bolts: orNull(closure.bolts ?? undefined, ({ count, diameterM }) => ({
        count,
        diameter: mm(diameterM),
      })),
      interlock: closure.interlock,
    })),
    seal: orNull(items.seal, (seal) => ({ kind: seal.kind, diameter: mm(seal.diameterM) })),
    coupling: orNull(items.coupling, (coupling) => ({
      torque: coupling.ratedTorqueNm,
      metalFree: coupling.kind === 'magnetic, metal-free',
      cooled: coupling.cooled,
      shaftDiameter: mm(coupling.shaftDiameterM),
    })),
    heater: orNull(items.heater, (heater) => ({ power: heater.powerW })),
    ...internals(items),
    ...attachments(items),
  };
};

const plateOf = (drive: ItemOf<'drive'>): string | null => {
  const protection = drive.electrical?.protection;
  return protection == null ? null : `Ex ${protection.gasGroup} ${protection.temperatureClass}`;
};

const namesOf = (input: DrawingInput): DrawingModel['names'] => {
  const places = [{ items: input.frame, set: 0 }, ...input.sets.map(({ items }, set) => ({ items, set }))];
  const entries = places.flatMap(({ items, set }) =>
    slotNames.flatMap((slot): [SlotPath, string][] => {
      const item = items[slot];
      return item === undefined ? [] : [[slotPath(slot, set), item.name]];
    }),
  );
  return Object.fromEntries(entries);
};

/** What there is to draw; sets without a vessel are left out, slots nobody has chosen as well. */
export const drawingModelOf = (input: DrawingInput): DrawingModel => ({
  title: input.title,
  parallel: input.parallel ?? false,
  sets: input.sets.map(drawnSet).filter((set) => set !== undefined),
  frame: orNull(input.frame.frame, (frame) => ({
    height: mm(frame.heightM),
    topHeight: mm(frame.topHeightM),
  })),
  lift: orNull(input.frame.lift, (lift) => ({
    kind: lift.kind,
    moves: lift.moves,
    stroke: mm(lift.strokeM),
  })),
  drive: orNull(input.frame.drive, (drive) => ({ power: drive.powerW, plate: plateOf(drive) })),
  circulator: input.frame.circulator !== undefined,
  names: namesOf(input),
  verdicts: input.verdicts ?? {},
});
