import { elasticLimitPa } from '@flangewise/catalogue';
import { elasticModulusAt, vesselExternalRating } from '@flangewise/engineering';
import { normalAtmospherePa } from '@flangewise/quantities';
import { known, missing, notApplicable, reckon, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { fromMemory, published } from '../../source.js';
import { wallAt, wallReads } from './carried-pressure.js';

const ambientK = 293.15;

/** Inside against outside: a difference, not a pressure over atmosphere. */
const difference = (shown: string): string => shown.replace('(g)', '');

/** A full jacket under its PS while the vessel is empty, and evacuated where the process asks for it: both at once. */
export const externalPressure = comparison({
  id: 'strength.vacuum-and-jacket',
  title: 'Vessel stands vacuum and jacket pressure together',
  group: 'strength',
  kind: 'hard',
  unit: 'Pa',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: { vessel: ['jacket'] },
  limitOf: { vessel: [...wallReads, 'jacket'] },
  conditions: ['vacuum', 'temperatureMaxK'],
  demand: ({ vessel }, { vacuum }) => {
    const jacketPa = vessel.jacket?.maxPressurePaGauge ?? 0;
    const vacuumPa = vacuum === true ? normalAtmospherePa : 0;
    return jacketPa + vacuumPa === 0 ? notApplicable : known(jacketPa + vacuumPa);
  },
  limit: ({ vessel }, { vacuum, temperatureMaxK }, proof) => {
    if (vacuum !== true && vessel.jacket === null) return notApplicable;
    const temperatureK = temperatureMaxK ?? vessel.rating?.maxTemperatureK ?? ambientK;
    const {
      material,
      innerDiameterM,
      cylinderLengthM,
      wallThicknessM,
      endThicknessM,
      form,
      corrosionAllowanceM,
    } = wallAt(vessel, temperatureK);
    const modulus = elasticModulusAt(material, temperatureK);
    const limit = elasticLimitPa(material, temperatureK);
    if (!modulus.ok || !limit.ok) return missing(`elastic modulus and limit of ${material} at temperature`);
    const rated = reckon(
      vesselExternalRating,
      {
        innerDiameterM,
        cylinderLengthM,
        wallThicknessM,
        endThicknessM,
        form,
        corrosionAllowanceM,
        elasticModulusPa: modulus.value.value,
        elasticLimitPa: limit.value,
        jacketPressurePaGauge: vessel.jacket?.maxPressurePaGauge ?? 0,
        innerPressurePaAbs: vacuum === true ? 0 : normalAtmospherePa,
      },
      proof,
    );
    return rated.ok
      ? unverified(
          rated.value.allowablePressurePa,
          'The table of the collapse pressure is from memory, unverified.',
        )
      : missing(rated.error.message);
  },
  say: ({ demand, limit, parts }, { vacuum }) =>
    `${parts.vessel.jacket === null ? 'Full vacuum presses' : vacuum === true ? 'Jacket pressure and full vacuum together press' : 'The jacket presses'} on ${parts.vessel.name} with a difference of ${difference(demand)}; shell and end stand ${difference(limit)}.`,
  source: [published('en-13445-3:2021 §8'), fromMemory('en-13445-3:2021 table 8.5-5')],
});
