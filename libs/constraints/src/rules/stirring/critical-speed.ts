import {
  elasticModulusAt,
  materialDensity,
  shaftCriticalSpeed as criticalSpeedCalculation,
} from '@flangewise/engineering';
import { figureOf, known, missing, notApplicable, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';

/** Share of the first critical speed up to which a shaft runs calmly. */
const calmShare = 0.65;
const ambientK = 293.15;

export const shaftCriticalSpeed = comparison({
  id: 'stirring.critical-speed',
  title: 'Speed stays below the first critical speed of the shaft',
  group: 'stirring',
  kind: 'hard',
  unit: '/s',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: { shaft: ['lengthM', 'diameterM', 'bearingSpanM', 'material'], stirrer: ['massKg'] },
  conditions: ['speedMaxPerS', 'temperatureMaxK'],
  demand: (_, { speedMaxPerS }) =>
    speedMaxPerS === undefined ? missing('process.stirringSpeed') : known(speedMaxPerS),
  limit: ({ shaft, stirrer }, { temperatureMaxK }, proof) => {
    if (shaft.bearingSpanM === 0) return notApplicable;
    const density = materialDensity(shaft.material);
    const modulus = elasticModulusAt(shaft.material, temperatureMaxK ?? ambientK);
    if (!density.ok || !modulus.ok) return missing(`density and elastic modulus of ${shaft.material}`);
    const outcome = reckon(
      criticalSpeedCalculation,
      {
        diameterM: shaft.diameterM,
        overhangM: shaft.lengthM,
        bearingSpanM: shaft.bearingSpanM,
        tipMassKg: stirrer.massKg,
        densityKgPerM3: density.value.value,
        elasticModulusPa: modulus.value.value,
        speedFraction: calmShare,
      },
      proof,
    );
    return figureOf(outcome, (r) => r.highestSpeedPerS);
  },
  say: ({ demand, limit, parts }) =>
    `${demand} are wanted; ${parts.shaft.name} with ${parts.stirrer.name} runs calmly up to ${limit} (65 % of its first critical speed).`,
  source: [
    published('timoshenko-strength-1 overhanging beam'),
    commonPractice('65 % of the first critical speed'),
  ],
});
