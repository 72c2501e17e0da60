import {
  designStressAt,
  evaluate,
  materialDensity,
  materialGrade,
  specialVessel as specialVesselCalculation,
} from '@flangewise/engineering';
import { permissibleExternalPressurePa, specialLeadTimeDays, specialMaterials } from '@flangewise/catalogue';
import {
  type CalculationError,
  fail,
  type ItemOf,
  type Outcome,
  type SpecialVessel,
  succeed,
  type System,
} from '@flangewise/model';
import { normalAtmospherePa } from '@flangewise/quantities';
import type { Bench } from './bench.js';
import { createBench } from './bench.js';
import { type Range, withSpecials } from './range.js';
import { shownQuantity } from './shown-quantity.js';
import { makeSpecialPart } from './special-part.js';
import { specialPriceOf } from './special-price.js';

/** A part made for one system, with the list price that the method gives. */
export interface MadeSpecial<S extends 'vessel' | 'cover' | 'shaft' = 'vessel' | 'cover' | 'shaft'> {
  readonly item: ItemOf<S>;
  /** Absent where the person may not see prices. */
  readonly price?: number;
  /** How it differs from the range. */
  readonly deviations: readonly string[];
}

/** Items of specials are numbered by the set that they belong to; they stand in no price list. */
const itemNumber = (set: number): string => `SP-${String(set + 1).padStart(4, '0')}`;

/** Share of the nominal volume from which on a stirrer reaches the batch. */
const smallestFill = 0.25;
const rimShare = { outer: 1.9, height: 0.45 };

const isMetalVessel = (item: { slot: string }): item is ItemOf<'vessel'> =>
  item.slot === 'vessel' && (item as ItemOf<'vessel'>).construction === 'metal';

/** The vessel of the range that is nearest in size: the special takes its bore, end and place on the frame. */
const nearest = (special: SpecialVessel, range: Range): ItemOf<'vessel'> | undefined => {
  const vessels = [...range.items.values()]
    .filter(isMetalVessel)
    .filter((v) => v.special !== true && v.jacket === null);
  const distance = (v: ItemOf<'vessel'>): number =>
    special.innerDiameterM === undefined
      ? Math.abs(Math.log(v.nominalVolumeL / special.volumeL)) - v.geometry.wallThicknessM
      : Math.abs(v.geometry.innerDiameterM - special.innerDiameterM);
  return vessels.reduce<ItemOf<'vessel'> | undefined>(
    (best, next) => (best === undefined || distance(next) < distance(best) ? next : best),
    undefined,
  );
};

interface Given {
  readonly innerDiameterM: number;
  readonly stressPa: number;
  readonly densityKgPerM3: number;
  readonly corrosionAllowanceM: number;
}

/** Ends of a special, the usual one first; a hemisphere carries the highest pressure. */
const endForms = ['2:1 ellipsoidal', 'hemispherical'] as const;

/** Walls with the first form of end that carries the pressure. */
const wallsOf = (special: SpecialVessel, given: Given) => {
  const tried = endForms.map((form) => ({
    form,
    outcome: evaluate(specialVesselCalculation, {
      code: 'EN 13445-3',
      innerDiameterM: given.innerDiameterM,
      volumeM3: special.volumeL / 1000,
      form,
      pressurePaGauge: special.pressurePaGauge,
      allowableStressPa: given.stressPa,
      densityKgPerM3: given.densityKgPerM3,
      corrosionAllowanceM: given.corrosionAllowanceM,
    }),
  }));
  const found = tried.find(({ outcome }) => outcome.ok) ?? tried.at(-1);
  if (found === undefined) throw new Error('a special vessel has no form of end to be tried');
  return found.outcome.ok ? succeed({ ...found.outcome.value, form: found.form }) : found.outcome;
};

/** Lowest temperature that its material is used at. */
const lowestTemperatureK = (material: string): Outcome<number, CalculationError> => {
  const grade = materialGrade(material);
  if (!grade.ok) return grade;
  const { service } = grade.value;
  return service === undefined
    ? fail({
        code: 'CALC_MISSING_PROPERTY',
        message: `material: no lowest service temperature of ${material} is on file`,
        field: 'material',
        given: material,
      })
    : succeed(service.minC + 273.15);
};

/**
 * A special vessel by its numbers: walls by EN 13445-3 (thick-wall method where e/De exceeds 0.16), mass, price by
 * the maker's rates, lead time. To be reviewed and released by an engineer.
 *
 * @error CALC_MISSING_PROPERTY for a material without rates or design data; as special.vessel
 */
export const makeSpecialVessel = (
  special: SpecialVessel,
  range: Range,
): Outcome<MadeSpecial<'vessel'>, CalculationError> => {
  const template = nearest(special, range);
  if (template === undefined || !specialMaterials.includes(special.material)) {
    return fail({
      code: 'CALC_MISSING_PROPERTY',
      message: `material: ${special.material} given; special vessels are made of ${specialMaterials.join(', ')}`,
      field: 'material',
      given: special.material,
    });
  }
  const stress = designStressAt(special.material, special.maxTemperatureK);
  if (!stress.ok) return stress;
  const density = materialDensity(special.material);
  if (!density.ok) return density;
  const coldest = lowestTemperatureK(special.material);
  if (!coldest.ok) return coldest;
  const innerDiameterM = special.innerDiameterM ?? template.geometry.innerDiameterM;
  const walls = wallsOf(special, {
    innerDiameterM,
    stressPa: stress.value.stressPa,
    densityKgPerM3: density.value.value,
    corrosionAllowanceM: template.corrosionAllowanceM,
  });
  if (!walls.ok) return walls;
  const {
    wallThicknessM,
    endThicknessM,
    cylinderLengthM,
    totalDepthM,
    massKg,
    outerDiameterM,
    blankMassKg,
    shellMethod,
    form,
  } = walls.value;
  const geometry = {
    innerDiameterM,
    cylinderLengthM,
    wallThicknessM,
    endForm: form,
    endThicknessM,
    flangeOuterDiameterM: Math.max(outerDiameterM, innerDiameterM * rimShare.outer),
    flangeHeightM: innerDiameterM * rimShare.height,
  };
  const outside = permissibleExternalPressurePa({
    geometry,
    material: special.material,
    carrier: null,
    corrosionAllowanceM: template.corrosionAllowanceM,
    maxTemperatureK: special.maxTemperatureK,
  });
  const psBar = Math.floor(special.pressurePaGauge / 1e4) / 10;
  const item: ItemOf<'vessel'> = {
    ...template,
    id: itemNumber(special.set),
    name: `Special vessel ${String(special.volumeL)} L, ${special.material}, PS ${String(psBar)}`,
    massKg: Number(massKg.toPrecision(3)),
    leadTimeDays: specialLeadTimeDays,
    wetted: [special.material],
    rating: {
      maxPressurePaGauge: special.pressurePaGauge,
      minTemperatureK: coldest.value,
      maxTemperatureK: special.maxTemperatureK,
      vacuum: outside.ok && outside.value >= normalAtmospherePa,
    },
    material: special.material,
    carrier: null,
    geometry,
    nominalVolumeL: special.volumeL,
    innerVolumeL: special.volumeL,
    depthM: totalDepthM,
    smallestFillL: special.volumeL * smallestFill,
    jacket: null,
    bottomPortM: null,
    special: true,
  };
  return succeed({
    item,
    ...specialPriceOf(special.material, { massKg, blankMassKg }, range.specialRates),
    deviations: [
      `wall ${shownQuantity(wallThicknessM, 'm', 'up')} by the ${shellMethod} method, end ${shownQuantity(endThicknessM, 'm', 'up')} (${form}), mass ${shownQuantity(massKg, 'kg', 'up')}`,
      `design stress ${`${String(Math.round(stress.value.stressPa / 1e6))} MPa`} at ${shownQuantity(special.maxTemperatureK, 'K')} (${stress.value.basis})`,
      'rim, closure, openings and drawings to be designed and released by an engineer',
    ],
  });
};

export interface SpecialPart extends MadeSpecial {
  readonly releasedBy?: string;
}

type WithSpecials = Pick<System, 'specials' | 'specialParts'>;

/** The specials of a system, made; trouble where one of them cannot be. */
export const specialsOf = (
  system: WithSpecials,
  range: Range,
): Outcome<readonly SpecialPart[], CalculationError> => {
  const parts: SpecialPart[] = [];
  const wishes = [
    ...system.specials.map((wish) => ({ wish, made: makeSpecialVessel(wish, range) })),
    ...(system.specialParts ?? []).map((wish) => ({ wish, made: makeSpecialPart(wish, range) })),
  ];
  for (const { wish, made } of wishes) {
    if (!made.ok) return made;
    parts.push({
      ...made.value,
      ...(wish.releasedBy === undefined ? {} : { releasedBy: wish.releasedBy }),
    });
  }
  return succeed(parts);
};

const benches = new WeakMap<Bench, Map<string, Bench>>();
/** Benches with specials that are kept for each range; the longest unused goes first. */
const mostKept = 8;

/** The bench of a system: the range itself, with the specials of that system added. */
export const benchOf = (system: WithSpecials, bench: Bench): Bench => {
  const wishes = [...system.specials, ...(system.specialParts ?? [])];
  if (wishes.length === 0) return bench;
  const key = JSON.stringify(wishes.map((special) => ({ ...special, releasedBy: undefined })));
  const known = benches.get(bench) ?? new Map<string, Bench>();
  benches.set(bench, known);
  const found = known.get(key);
  const make = (): Bench => {
    const made = specialsOf(system, bench.range);
    return createBench(withSpecials(bench.range, made.ok ? made.value : []), bench.rules);
  };
  const own = found ?? make();
  known.delete(key);
  known.set(key, own);
  const [oldest] = known.keys();
  if (known.size > mostKept && oldest !== undefined) known.delete(oldest);
  return own;
};
