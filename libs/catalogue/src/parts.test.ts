import {
  boltedCover,
  endForce,
  evaluate,
  heatTransferFluid,
  magnetKinds,
  materialGrade,
} from '@flangewise/engineering';
import type { ItemOf, SlotName } from '@flangewise/model';
import { describe, expect, test } from 'vitest';
import { demoCatalogue } from './demo-catalogue.js';
import { itemsOfSlot } from './find-items.js';
import { range } from './range.js';

const of = <S extends SlotName>(slot: S) =>
  itemsOfSlot(demoCatalogue, slot).map((item) => [`${item.id} ${item.name}`, item] as const);

describe('materials', () => {
  /** Windows of optical probes: no strength and no corrosion data are on file for it. */
  const withoutData = new Set(['sapphire']);

  test('every wetted material is one of the material tables, by its key', () => {
    for (const { id, wetted } of demoCatalogue.items) {
      for (const material of wetted) {
        const grade = materialGrade(material);
        if (withoutData.has(material)) expect(grade.ok).toBe(false);
        else expect(grade.ok && grade.value.key, `${id}: ${material}`).toBe(material);
      }
    }
  });

  test.each(of('material'))('there is a vessel in %s', (_, { material, construction }) => {
    const vessels = itemsOfSlot(demoCatalogue, 'vessel');
    expect(vessels.some((v) => v.material === material && v.construction === construction)).toBe(true);
  });
});

describe('seals', () => {
  /**
   * Limits of seal materials in °C. FKM, FFKM, HNBR, FEPM, VMQ and PTFE: suppliers' O-ring tables (read);
   * EPDM and graphite from memory, unverified.
   */
  const limits: Readonly<Record<string, readonly [number, number]>> = {
    FKM: [-20, 200],
    FFKM: [-15, 260],
    EPDM: [-45, 150],
    HNBR: [-30, 150],
    FEPM: [-5, 200],
    VMQ: [-60, 200],
    PTFE: [-200, 260],
    graphite: [-200, 450],
  };
  const elastomers = ['FKM', 'FFKM', 'EPDM', 'HNBR', 'FEPM', 'VMQ'];
  const seals = of('seal');

  test.each(seals)('%s stays within its material', (_, seal) => {
    const { minTemperatureK, maxTemperatureK } = seal.rating!;
    const [low, high] = limits[seal.material] ?? [-196, 350];
    expect(minTemperatureK).toBeGreaterThanOrEqual(low + 273.15);
    expect(maxTemperatureK).toBeLessThanOrEqual(high + 273.15);
  });

  test.each(seals)('%s has the loads of its kind', (_, { kind, material, gasketFactor, seatingStressPa }) => {
    // Self-energising: m = 0, y = 0 (ASME VIII-1 appendix 2, table 2-5.1). Sheets carry figures of the maker.
    if (kind === 'flat gasket') {
      expect(gasketFactor).toBeGreaterThan(0);
      expect(seatingStressPa).toBeGreaterThan(0);
    } else expect([gasketFactor, seatingStressPa], material).toEqual([0, 0]);
  });

  test('elastomers do not claim to stand rapid decompression, the others do', () => {
    for (const [name, { material, standsDecompression }] of seals) {
      expect(standsDecompression, name).toBe(!elastomers.includes(material));
    }
  });

  test.each(itemsOfSlot(demoCatalogue, 'vessel').map((v) => [`${v.id} ${v.name}`, v] as const))(
    '%s finds a seal for its whole pressure and temperature',
    (_, { bore, rating }) => {
      const found = itemsOfSlot(demoCatalogue, 'seal').filter(
        (seal) =>
          seal.bore === bore &&
          seal.rating!.maxPressurePaGauge >= rating!.maxPressurePaGauge &&
          seal.rating!.maxTemperatureK >= rating!.maxTemperatureK,
      );
      expect(found.length).toBeGreaterThan(0);
    },
  );

  test('a seal holds −20 and 200 °C at 100 bar on bore 90, and no FKM or FFKM ring holds both ends', () => {
    const held = itemsOfSlot(demoCatalogue, 'seal').filter(
      ({ bore, rating }) =>
        bore === 90 &&
        rating!.maxPressurePaGauge >= 1e7 &&
        rating!.minTemperatureK <= 253.15 &&
        rating!.maxTemperatureK >= 473.15,
    );
    expect(held.length).toBeGreaterThan(0);
    expect(held.map((s) => s.material)).not.toContain('FKM');
    expect(held.map((s) => s.material)).not.toContain('FFKM');
  });
});

describe('closures', () => {
  const stressPa = range.bolting.stressMPa * 1e6;
  const sealDiameterM = (bore: number): number =>
    Math.max(
      ...itemsOfSlot(demoCatalogue, 'seal')
        .filter((s) => s.bore === bore)
        .map((s) => s.diameterM),
    );

  test('the bolt stress of the range stays below a third of the proof stress of its class', () => {
    // ISO 898-1: proof stress of class 8.8 up to M16 is 580 MPa.
    expect(range.bolting.class).toBe('8.8');
    expect(stressPa).toBeLessThan(580e6 / 3);
  });

  test.each(of('closure').filter(([, c]) => c.kind === 'bolted'))(
    '%s is rated at what its bolts carry, and the bolts hold when tightened',
    (_, { bolts, ratedForceN, bore }) => {
      const G = sealDiameterM(bore);
      const rated = evaluate(boltedCover, {
        gasketOuterDiameterM: G,
        gasketInnerDiameterM: G - 0.001,
        gasketFactor: 0,
        seatingStressPa: 0,
        pressurePaGauge: ratedForceN / ((Math.PI / 4) * G ** 2),
        boltCount: bolts!.count,
        boltDiameterM: bolts!.diameterM,
        boltPitchM: bolts!.pitchM,
        boltAssemblyStressPa: stressPa,
        boltOperatingStressPa: stressPa,
        boltProofStressPa: 580e6,
      });
      if (!rated.ok) throw new Error(rated.error.message);
      expect(rated.value.utilisation).toBeLessThanOrEqual(1);
      expect(rated.value.utilisation).toBeGreaterThan(0.9);
      expect(rated.value.proofUtilisation).toBeLessThan(1);
    },
  );

  test.each(itemsOfSlot(demoCatalogue, 'vessel').map((v) => [`${v.id} ${v.name}`, v] as const))(
    '%s finds a closure for its end force',
    (_, { bore, family, rating }) => {
      const force = evaluate(endForce, {
        gasketDiameterM: sealDiameterM(bore),
        pressurePaGauge: rating!.maxPressurePaGauge,
      });
      if (!force.ok) throw new Error(force.error.message);
      const fitting = itemsOfSlot(demoCatalogue, 'closure').filter(
        (c) => c.bore === bore && c.families.includes(family) && c.ratedForceN >= force.value.forceN,
      );
      expect(fitting.length).toBeGreaterThan(0);
    },
  );

  test('a quick-acting closure has an interlock, and segments come with a lift', () => {
    for (const [name, { kind, interlock, needsLift }] of of('closure')) {
      if (kind !== 'bolted') expect(interlock, name).toBe(true);
      if (kind === 'segment') expect(needsLift, name).toBe(true);
    }
  });
});

describe('internals and accessories', () => {
  test.each(of('coil'))('%s has the surface of its turns', (_, coil) => {
    const area = Math.PI * coil.tubeDiameterM * Math.PI * coil.coilDiameterM * coil.turns;
    expect(coil.areaM2).toBeCloseTo(area, 4);
    expect(coil.innerClearanceM).toBeCloseTo(coil.coilDiameterM - coil.tubeDiameterM, 4);
    expect(coil.coilDiameterM + coil.tubeDiameterM).toBeLessThan(coil.bore / 1000);
  });

  /** No table of its own: a mixture whose figures hang on its strength. */
  const mixtures = ['water and glycol'];

  test.each(of('fluid').filter(([, f]) => !mixtures.includes(f.fluid)))(
    '%s has the figures of its kind in the middle of its span, and tables over all of it',
    (_, fluid) => {
      const at = (temperatureK: number) => evaluate(heatTransferFluid, { fluid: fluid.fluid, temperatureK });
      const middle = at((fluid.minTemperatureK + fluid.maxTemperatureK) / 2);
      expect([at(fluid.minTemperatureK).ok, at(fluid.maxTemperatureK).ok]).toEqual([true, true]);
      if (!middle.ok) throw new Error(middle.error.message);
      expect(Math.abs(fluid.densityKgPerM3 / middle.value.densityKgPerM3 - 1)).toBeLessThan(0.01);
      expect(Math.abs(fluid.heatCapacityJPerKgK / middle.value.heatCapacityJPerKgK - 1)).toBeLessThan(0.01);
    },
  );

  test.each(of('coupling'))('%s names a magnet of the tables and keeps it below its limit', (_, coupling) => {
    expect(magnetKinds).toContain(coupling.magnet);
    const highest = coupling.magnet === 'NdFeB' ? 423.15 : 573.15;
    expect(coupling.maxMagnetTemperatureK).toBeLessThanOrEqual(highest);
  });

  test.each(of('relief'))('%s opens no more than its port', (_, relief) => {
    const port = relief.portsM[0]!;
    expect(relief.areaM2).toBeLessThanOrEqual((Math.PI / 4) * port ** 2);
    expect(relief.rating!.vacuum).toBe(relief.vacuumSupport);
    expect(relief.rating!.maxPressurePaGauge).toBeGreaterThan(relief.burstPressurePaGauge);
  });

  test('every accessory goes into a port that some cover of its families has', () => {
    const covers = itemsOfSlot(demoCatalogue, 'cover');
    const accessories = demoCatalogue.items.filter((item) => item.portsM.length > 0);
    for (const item of accessories) {
      const fits = covers.some(
        (cover) =>
          item.families.some((f) => f === 'any' || cover.families.includes(f)) &&
          item.portsM.every((need) => cover.ports.some((port) => port.diameterM === need)),
      );
      expect(fits, `${item.id} ${item.name}`).toBe(true);
    }
  });

  test('what touches the product in the metal-free family is no metal', () => {
    const nonMetals = ['PTFE', 'borosilicate glass 3.3', 'FKM', 'FFKM', 'EPDM', 'graphite'];
    const slots: readonly SlotName[] = [
      'vessel',
      'cover',
      'stirrer',
      'shaft',
      'baffles',
      'coupling',
      'temperatureProbe',
      'pressureGauge',
      'gasInlet',
      'sampling',
      'bottomValve',
      'condenser',
      'portPiece',
      'processProbe',
    ];
    const mere = demoCatalogue.items.filter((i) => slots.includes(i.slot) && i.families.includes('Mere'));
    for (const slot of slots)
      expect(
        mere.some((i) => i.slot === slot),
        slot,
      ).toBe(true);
    for (const { id, wetted } of mere) for (const m of wetted) expect(nonMetals, id).toContain(m);
  });
});

describe('every vessel finds a complete set of parts', () => {
  const items = <S extends SlotName>(slot: S): readonly ItemOf<S>[] => itemsOfSlot(demoCatalogue, slot);
  const inFamily = (family: string) => (item: { readonly families: readonly string[] }) =>
    item.families.includes('any') || item.families.includes(family);

  test.each(of('vessel'))('%s', (_, vessel) => {
    const mine = inFamily(vessel.family);
    const { maxPressurePaGauge: ps, maxTemperatureK: ts } = vessel.rating!;
    const stands = (item: { readonly rating?: ItemOf<'cover'>['rating'] }): boolean =>
      item.rating === undefined ||
      (item.rating.maxPressurePaGauge >= ps && item.rating.maxTemperatureK >= ts);
    const lowest = vessel.construction === 'lined' ? Math.min(ps, 25e5) : ps;
    const covers = items('cover').filter(
      (c) =>
        mine(c) &&
        c.bore === vessel.bore &&
        c.rating!.maxPressurePaGauge >= lowest &&
        (vessel.construction === 'metal' ? c.material === vessel.material : c.construction !== 'metal'),
    );
    expect(covers.length, 'cover').toBeGreaterThan(0);
    const bushings = new Set(covers.map((c) => c.bushing));
    const couplings = items('coupling').filter((c) => mine(c) && bushings.has(c.bushing));
    expect(couplings.length, 'coupling').toBeGreaterThan(0);
    const shafts = items('shaft').filter(
      (s) => mine(s) && s.lengthM < vessel.depthM && s.lengthM >= 0.55 * vessel.depthM,
    );
    expect(
      shafts.some((s) => couplings.some((c) => c.shaftDiameterM === s.diameterM)),
      'shaft',
    ).toBe(true);
    const stirrers = items('stirrer').filter(
      (s) => mine(s) && s.diameterM < 0.98 * vessel.geometry.innerDiameterM,
    );
    expect(
      stirrers.some((s) => shafts.some((h) => h.diameterM === s.shaftDiameterM && h.material === s.material)),
      'stirrer on shaft',
    ).toBe(true);
    const probes = items('temperatureProbe').filter(
      (p) =>
        mine(p) && p.reachM !== undefined && p.reachM <= vessel.depthM && p.reachM >= 0.5 * vessel.depthM,
    );
    expect(probes.length, 'thermowell').toBeGreaterThan(0);
    const discs = items('relief').filter((d) => mine(d) && d.burstPressurePaGauge * (1 + d.tolerance) <= ps);
    expect(
      Math.max(...discs.map((d) => d.burstPressurePaGauge * (1 - d.tolerance) * d.operatingRatio)) / ps,
      'share of PS that a disc lets the process use',
    ).toBeGreaterThan(0.45);
    const gauges = items('pressureGauge').filter(
      (g) => mine(g) && g.rangePaGauge >= ps && g.rangePaGauge <= 4 * ps,
    );
    expect(gauges.length, 'gauge').toBeGreaterThan(0);
    const frames = items('frame').filter((f) => mine(f) && f.bores.includes(vessel.bore));
    expect(
      frames.some((f) => f.maxMassKg > vessel.massKg + vessel.innerVolumeL),
      'frame',
    ).toBe(true);
    expect(items('drive').some(mine) && items('control').some(mine), 'drive and control').toBe(true);
    const heated =
      vessel.jacket === null
        ? items('heater').some(
            (h) =>
              mine(h) &&
              h.bore === vessel.bore &&
              h.maxVesselDiameterM >= vessel.geometry.innerDiameterM + 2 * vessel.geometry.wallThicknessM,
          )
        : items('circulator').some(
            (c) =>
              mine(c) && (c.pressureControlled || c.pumpPressurePaGauge <= vessel.jacket!.maxPressurePaGauge),
          );
    expect(heated || vessel.construction === 'glass', 'heat').toBe(true);
    if (vessel.construction === 'glass') {
      const across = Math.max(
        vessel.geometry.flangeOuterDiameterM,
        vessel.geometry.innerDiameterM + 2 * vessel.geometry.wallThicknessM + 2 * (vessel.jacket?.gapM ?? 0),
      );
      const shields = items('shield').filter(
        (s) => mine(s) && s.maxDiameterM >= across && s.maxHeightM >= vessel.depthM,
      );
      expect(shields.length, 'shield').toBeGreaterThan(0);
    }
    if (vessel.bottomPortM !== null) {
      const valves = items('bottomValve').filter(
        (v) =>
          mine(v) && v.diameterM === vessel.bottomPortM && (stands(v) || vessel.construction !== 'metal'),
      );
      expect(valves.length, 'bottom valve').toBeGreaterThan(0);
    }
    const { smallestVolumeL, largestVolumeL, maxPressureBarGauge, maxTemperatureC } = range.families.find(
      (f) => f.name === vessel.family,
    )!;
    expect(vessel.nominalVolumeL).toBeGreaterThanOrEqual(smallestVolumeL);
    expect(vessel.nominalVolumeL).toBeLessThanOrEqual(largestVolumeL);
    expect(ps / 1e5).toBeLessThanOrEqual(maxPressureBarGauge);
    expect(ts - 273.15).toBeLessThanOrEqual(maxTemperatureC + 1e-9);
  });

  test('the ends of every family are reached by one of its vessels', () => {
    for (const family of range.families) {
      const vessels = items('vessel').filter((v) => v.family === family.name);
      const volumes = vessels.map((v) => v.nominalVolumeL);
      expect([Math.min(...volumes), Math.max(...volumes)]).toEqual([
        family.smallestVolumeL,
        family.largestVolumeL,
      ]);
      expect(Math.max(...vessels.map((v) => v.rating!.maxPressurePaGauge)) / 1e5).toBe(
        family.maxPressureBarGauge,
      );
      expect(Math.max(...vessels.map((v) => v.rating!.maxTemperatureK)) - 273.15).toBeCloseTo(
        family.maxTemperatureC,
        9,
      );
    }
  });
});
