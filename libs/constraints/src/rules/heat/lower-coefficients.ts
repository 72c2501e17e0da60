import { materialConductivity, typicalCoefficient } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import type { Conditions } from '../../conditions.js';
import { type Proof, reckon } from '../../figure.js';
import { mainLiquid } from '../../liquid.js';
import { fromMemory } from '../../source.js';
import { proveStep } from '../own-step.js';

/** Viscosities up to which a batch counts as thin, and as no heavy oil [Pa·s]. */
const thin = 0.005;
const heavy = 0.1;

/** Coil on tap water in a stirred batch, lower ends by its viscosity [W/(m²·K)] (from memory, unverified). */
const coilLower = { thin: 400, light: 170, heavy: 57 } as const;

type Batch = Pick<Conditions, 'media' | 'viscosityMaxPaS'>;

const thickness = ({ viscosityMaxPaS }: Batch): keyof typeof coilLower =>
  viscosityMaxPaS === undefined || viscosityMaxPaS > thin
    ? viscosityMaxPaS !== undefined && viscosityMaxPaS > heavy
      ? 'heavy'
      : 'light'
    : 'thin';

const contentOf = (batch: Batch): 'water' | 'aqueous solution' | 'organic liquid' | 'heavy oil' => {
  if (thickness(batch) === 'heavy') return 'heavy oil';
  const liquid = mainLiquid(batch.media);
  if (liquid?.massFraction !== undefined && liquid.massFraction < 1) return 'aqueous solution';
  return liquid?.name.toLowerCase() === 'water' ? 'water' : 'organic liquid';
};

export const coilSource = fromMemory(
  'coil on tap water: lower ends 400 (thin), 170 (light), 57 W/(m²·K) (heavy)',
);

export const coilLowerCoefficient = (batch: Batch, proof: Proof | undefined): number => {
  const value = coilLower[thickness(batch)];
  proveStep(proof, {
    calculation: 'heat.coilLowerCoefficient',
    title: 'Lower end of the overall coefficient of the coil',
    inputs: { viscosityPaS: batch.viscosityMaxPaS ?? null },
    step: {
      symbol: 'U_min',
      formula: 'as tabulated by the viscosity of the batch',
      substituted: thickness(batch),
      value,
      unit: 'W/(m2.K)',
      note: 'from memory, unverified',
    },
    source: [coilSource],
    range: 'stirred batch, tap water in the coil',
  });
  return value;
};

export const jacketedReads = [
  'jacket',
  'innerVolumeL',
  'construction',
  'geometry',
  'liningThicknessM',
] as const;

type Jacketed = Pick<ItemOf<'vessel'>, (typeof jacketedReads)[number]>;

/** What glass or a lining adds to the resistance of a metal wall [m²·K/W]. */
const addedResistance = ({ construction, geometry, liningThicknessM }: Jacketed): number => {
  const resistance = (material: string, thicknessM: number): number => {
    const conductivity = materialConductivity(material);
    return conductivity.ok ? thicknessM / conductivity.value.value : 0;
  };
  if (construction === 'glass') return resistance('borosilicate glass 3.3', geometry.wallThicknessM);
  return construction === 'lined' ? resistance('PTFE', liningThicknessM ?? 0) : 0;
};

/** Jacket on thermal oil: the lower end of usual coefficients, with the resistance of glass or lining on top. */
export const jacketLowerCoefficient = (
  vessel: Jacketed,
  batch: Batch,
  proof: Proof | undefined,
): number | undefined => {
  const usual = reckon(
    typicalCoefficient,
    { wall: 'stainless steel', medium: 'thermal oil', content: contentOf(batch) },
    proof,
  );
  if (!usual.ok) return undefined;
  const { lowerCoefficientWPerM2K } = usual.value;
  const added = addedResistance(vessel);
  if (added === 0) return lowerCoefficientWPerM2K;
  const value = 1 / (1 / lowerCoefficientWPerM2K + added);
  proveStep(proof, {
    calculation: 'heat.addedResistance',
    title: 'Lower end of the overall coefficient through glass or lining',
    inputs: { lowerCoefficientWPerM2K, resistanceM2KPerW: added },
    step: {
      symbol: 'U_min',
      formula: '1/(1/U + s/λ)',
      substituted: `1/(1/${lowerCoefficientWPerM2K.toPrecision(4)} + ${added.toPrecision(3)})`,
      value,
      unit: 'W/(m2.K)',
      note: `wall of ${vessel.construction === 'glass' ? 'borosilicate glass 3.3' : 'PTFE'} in series`,
    },
    source: [fromMemory('conductivity of PTFE 0.25 W/(m·K); glass by ISO 3585')],
    range: 'plane walls in series',
  });
  return value;
};

/** Heated area that the batch wets [m²]: its share of the volume, less than the true one for a dished end. */
export const wettedJacketM2 = (vessel: Jacketed, batchVolumeM3: number | undefined): number =>
  (vessel.jacket?.areaM2 ?? 0) * Math.min(1, ((batchVolumeM3 ?? 0) * 1000) / vessel.innerVolumeL);
