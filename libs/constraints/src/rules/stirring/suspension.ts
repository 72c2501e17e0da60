import { justSuspendedSpeed, zwieteringConstant } from '@flangewise/engineering';
import { type Figure, known, missing, notApplicable, reckon, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { fromMemory, published } from '../../source.js';

/** Mass of solids by mass of liquid, in percent. */
const byLiquid = (massFraction: number): number => (100 * massFraction) / (1 - massFraction);

export const solidsSuspended = comparison({
  id: 'stirring.suspension',
  title: 'Solids are kept off the bottom',
  group: 'stirring',
  kind: 'caution',
  unit: '/s',
  utilisation: 'ratio',
  demandOf: { stirrer: ['impeller', 'diameterM'] },
  limitOf: {},
  conditions: [
    'solidsMassFraction',
    'particleSizeM',
    'solidDensityKgPerM3',
    'densityKgPerM3',
    'viscosityMaxPaS',
    'speedMaxPerS',
  ],
  demand: ({ stirrer }, conditions, proof): Figure => {
    const { solidsMassFraction, particleSizeM, solidDensityKgPerM3, densityKgPerM3, viscosityMaxPaS } =
      conditions;
    if (solidsMassFraction === undefined || solidsMassFraction <= 0 || solidsMassFraction >= 1)
      return notApplicable;
    if (particleSizeM === undefined) return missing('process.solids.particleSize');
    if (solidDensityKgPerM3 === undefined) return missing('process.solids.density');
    if (densityKgPerM3 === undefined) return missing('process.density');
    if (viscosityMaxPaS === undefined) return missing('process.viscosity');
    const constant = reckon(zwieteringConstant, { impeller: stirrer.impeller }, proof);
    if (!constant.ok) return missing(constant.error.message);
    const speed = reckon(
      justSuspendedSpeed,
      {
        zwieteringConstant: constant.value.highConstant,
        kinematicViscosityM2PerS: viscosityMaxPaS / densityKgPerM3,
        particleDiameterM: particleSizeM,
        solidDensityKgPerM3,
        liquidDensityKgPerM3: densityKgPerM3,
        solidsMassPercent: byLiquid(solidsMassFraction),
        impellerDiameterM: stirrer.diameterM,
      },
      proof,
    );
    return speed.ok
      ? unverified(speed.value.speedPerS, 'The constant of the impeller is from memory, unverified.')
      : missing(speed.error.message);
  },
  limit: (_, { speedMaxPerS }) =>
    speedMaxPerS === undefined ? missing('process.stirringSpeed') : known(speedMaxPerS),
  say: ({ demand, limit, parts }) =>
    `${parts.stirrer.name} keeps the solids off the bottom from ${demand} on; the highest speed is ${limit}.`,
  source: [published('zwietering-1958'), fromMemory('constants by impeller type, the careful end')],
});
