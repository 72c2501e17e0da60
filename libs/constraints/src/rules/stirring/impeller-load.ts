import { impellerTorque } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import type { Conditions } from '../../conditions.js';
import { type Figure, missing, type Proof, reckon, unverified } from '../../figure.js';

export const impellerReads = {
  vessel: ['geometry'],
  stirrer: ['impeller', 'diameterM', 'bladeCount', 'bladeWidthM'],
} as const;

export const impellerConditions = [
  'viscosityMinPaS',
  'viscosityMaxPaS',
  'densityKgPerM3',
  'speedMaxPerS',
  'serviceFactor',
] as const;

interface Impeller {
  readonly vessel: Pick<ItemOf<'vessel'>, 'geometry'>;
  readonly stirrer: Pick<ItemOf<'stirrer'>, 'impeller' | 'diameterM' | 'bladeCount' | 'bladeWidthM'>;
}

type Liquid = Pick<Conditions, (typeof impellerConditions)[number]>;

/** Density where nobody said: that of water, which no usual solvent exceeds by much [kg/m³]. */
export const assumedDensityKgPerM3 = 1000;

const rough = 'Upper end of measured power numbers was taken.';

/**
 * Highest torque or power over the batch: at its thinnest (inertia) and at its thickest (friction), with the service
 * factor and the upper end of the measured power numbers.
 */
export const impellerLoad = (
  what: 'highTorqueNm' | 'highPowerW',
  { vessel, stirrer }: Impeller,
  at: { readonly liquid: Liquid; readonly proof?: Proof | undefined },
): Figure => {
  const { viscosityMinPaS, viscosityMaxPaS, densityKgPerM3, speedMaxPerS, serviceFactor } = at.liquid;
  if (speedMaxPerS === undefined) return missing('process.stirringSpeed');
  if (viscosityMaxPaS === undefined) return missing('process.viscosity');
  const loads = [...new Set([viscosityMinPaS ?? viscosityMaxPaS, viscosityMaxPaS])].map((viscosityPaS) =>
    reckon(
      impellerTorque,
      {
        impeller: stirrer.impeller,
        impellerDiameterM: stirrer.diameterM,
        vesselDiameterM: vessel.geometry.innerDiameterM,
        densityKgPerM3: densityKgPerM3 ?? assumedDensityKgPerM3,
        viscosityPaS,
        speedPerS: speedMaxPerS,
      },
      at.proof,
    ),
  );
  const failed = loads.find((load) => !load.ok);
  if (failed !== undefined && !failed.ok) return missing(failed.error.message);
  const highest = Math.max(...loads.map((load) => (load.ok ? load.value[what] : 0)));
  return unverified(highest * serviceFactor, rough);
};
