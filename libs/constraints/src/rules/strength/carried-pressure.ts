import { pressureWallOf } from '@flangewise/catalogue';
import { type DesignStress, designStressAt, glassVessel, vesselRating } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import { proveStep } from '../own-step.js';
import { type Figure, known, missing, type Proof, reckon, unverified } from '../../figure.js';

/** What of a vessel decides on the pressure that its wall carries. */
export const wallReads = [
  'rating',
  'geometry',
  'material',
  'carrier',
  'construction',
  'liningThicknessM',
  'corrosionAllowanceM',
] as const;

export type WalledVessel = Pick<ItemOf<'vessel'>, (typeof wallReads)[number]>;

/** The wall that carries, at a temperature; a lining takes no load. */
export const wallAt = (vessel: WalledVessel, temperatureK: number) => {
  const { liningThicknessM, ...body } = vessel;
  return pressureWallOf({
    ...body,
    ...(liningThicknessM === undefined ? {} : { liningThicknessM }),
    maxTemperatureK: temperatureK,
  });
};

const proveStress = (
  of: { readonly material: string; readonly temperatureK: number; readonly stress: DesignStress },
  proof: Proof | undefined,
): void => {
  const { material, temperatureK, stress } = of;
  proveStep(proof, {
    calculation: 'materials.designStress',
    title: 'Design stress of the wall',
    inputs: { material, temperatureK },
    step: {
      symbol: 'f',
      formula: stress.rule,
      substituted: `${material} at ${temperatureK.toFixed(2)} K`,
      value: stress.stressPa,
      unit: 'Pa',
      note: `${stress.source} (${stress.basis})`,
    },
    source: [{ citation: stress.source, basis: stress.basis }],
    range: 'up to the last row of the strength table of the material',
  });
};

const carriedByGlass = ({ geometry }: WalledVessel, proof: Proof | undefined): Figure => {
  const rated = reckon(
    glassVessel,
    {
      innerDiameterM: geometry.innerDiameterM,
      thicknessM: Math.min(geometry.wallThicknessM, geometry.endThicknessM),
    },
    proof,
  );
  return rated.ok ? known(rated.value.pressureBarGauge * 1e5) : missing(rated.error.message);
};

/** Shell and end, corroded, by EN 13445-3; above e/De = 0.16 by the thick-wall method. */
export const carriedAtStress = (
  vessel: WalledVessel,
  load: { readonly temperatureK: number; readonly stressPa: number },
  proof?: Proof,
) => {
  const wall = wallAt(vessel, load.temperatureK);
  return reckon(
    vesselRating,
    {
      code: 'EN 13445-3',
      innerDiameterM: wall.innerDiameterM,
      wallThicknessM: wall.wallThicknessM,
      form: wall.form,
      endThicknessM: wall.endThicknessM,
      corrosionAllowanceM: wall.corrosionAllowanceM,
      allowableStressPa: load.stressPa,
    },
    proof,
  );
};

/**
 * Pressure that the wall of a vessel carries at a temperature [Pa gauge]: metal by EN 13445-3, a lined vessel by its
 * carrier, glass by the glass rules. A material without design data carries no rating of its own.
 */
export const carriedPressure = (vessel: WalledVessel, temperatureK: number, proof?: Proof): Figure => {
  if (vessel.construction === 'glass') return carriedByGlass(vessel, proof);
  const { material } = wallAt(vessel, temperatureK);
  const stress = designStressAt(material, temperatureK);
  if (!stress.ok) return missing(`design stress of ${material}: ${stress.error.message}`);
  proveStress({ material, temperatureK, stress: stress.value }, proof);
  const rated = carriedAtStress(vessel, { temperatureK, stressPa: stress.value.stressPa }, proof);
  if (!rated.ok) return missing(rated.error.message);
  return stress.value.basis === 'from memory, unverified'
    ? unverified(
        rated.value.pressurePaGauge,
        `The design stress of ${material} rests on a value from memory, unverified.`,
      )
    : known(rated.value.pressurePaGauge);
};
