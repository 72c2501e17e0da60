import {
  designStressAt,
  elasticModulusAt,
  evaluate,
  materialGrade,
  minimumProofStrength,
  vesselExternalRating,
} from '@flangewise/engineering';
import { type Outcome, succeed } from '@flangewise/model';
import { pressureWallOf, type WalledVessel } from './pressure-wall.js';

/** Permissible tensile stress of glass (EN 1595), taken for its elastic limit: it stands far more in compression. */
const glassElasticLimitPa = 7e6;

/**
 * Elastic limit of EN 13445-3 clause 8: Rp0.2/1.25 of austenitic steel, Rp0.2 of other metals; where no proof
 * strength is on file over temperature, 1.5 times the allowable stress, which is never above Rp0.2.
 */
export const elasticLimitPa = (material: string, temperatureK: number): Outcome<number> => {
  const grade = materialGrade(material);
  if (!grade.ok) return grade;
  if (grade.value.key === 'borosilicate glass 3.3') return succeed(glassElasticLimitPa);
  const proof = minimumProofStrength({ material, proof: 'Rp0.2', temperatureK });
  if (proof.ok) return succeed(proof.value.stressPa / (grade.value.designRoute === 'austenitic' ? 1.25 : 1));
  const stress = designStressAt(material, temperatureK);
  return stress.ok ? succeed(1.5 * stress.value.stressPa) : stress;
};

/**
 * Pressure from outside that the body of a vessel stands at its highest temperature over the pressure inside [Pa]:
 * shell and end, corroded. A lining takes no load.
 *
 * @error as strength.vesselExternalRating, designStressAt and elasticModulusAt
 */
export const permissibleExternalPressurePa = (design: WalledVessel): Outcome<number> => {
  const { material, temperatureK, ...wall } = pressureWallOf(design);
  const modulus = elasticModulusAt(material, temperatureK);
  if (!modulus.ok) return modulus;
  const limit = elasticLimitPa(material, temperatureK);
  if (!limit.ok) return limit;
  const rated = evaluate(vesselExternalRating, {
    ...wall,
    elasticModulusPa: modulus.value.value,
    elasticLimitPa: limit.value,
  });
  return rated.ok ? succeed(rated.value.allowablePressurePa) : rated;
};
