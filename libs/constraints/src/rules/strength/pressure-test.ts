import { designStressAt, materialGrade, minimumProofStrength, testPressure } from '@flangewise/engineering';
import { type Figure, known, missing, notApplicable, type Proof, reckon, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { carriedAtStress, wallAt, type WalledVessel, wallReads } from './carried-pressure.js';

const testTemperatureK = 293.15;
/** Safety against yielding in the test, and in service where only the allowable stress is on file. */
const testSafety = 1.05;
const serviceSafety = 1.5;

/** Stress that the wall may see in the test: proof strength at room temperature over 1.05. */
const testStress = (material: string): { stressPa: number; fromMemory: boolean } | undefined => {
  const grade = materialGrade(material);
  const kind = grade.ok && grade.value.designRoute === 'austenitic' ? 'Rp1.0' : 'Rp0.2';
  const proof = minimumProofStrength({ material, proof: kind, temperatureK: testTemperatureK });
  if (proof.ok) {
    return {
      stressPa: proof.value.stressPa / testSafety,
      fromMemory: proof.value.basis === 'from memory, unverified',
    };
  }
  const stress = designStressAt(material, testTemperatureK);
  return stress.ok
    ? {
        stressPa: (stress.value.stressPa * serviceSafety) / testSafety,
        fromMemory: stress.value.basis === 'from memory, unverified',
      }
    : undefined;
};

const demandOf = (vessel: WalledVessel, proof: Proof | undefined): Figure => {
  if (vessel.construction === 'glass') return notApplicable;
  if (vessel.rating === undefined) return missing('PS of the vessel');
  const { maxPressurePaGauge, maxTemperatureK } = vessel.rating;
  const { material } = wallAt(vessel, maxTemperatureK);
  const cold = designStressAt(material, testTemperatureK);
  const hot = designStressAt(material, maxTemperatureK);
  if (!cold.ok || !hot.ok) return missing(`design stress of ${material}`);
  const test = reckon(
    testPressure,
    {
      maxPressureBarGauge: maxPressurePaGauge / 1e5,
      designStressAtTestPa: cold.value.stressPa,
      designStressAtMaxTemperaturePa: hot.value.stressPa,
    },
    proof,
  );
  return test.ok ? known(test.value.testPressureBarGauge * 1e5) : missing(test.error.message);
};

const limitOf = (vessel: WalledVessel, proof: Proof | undefined): Figure => {
  if (vessel.construction === 'glass') return notApplicable;
  const { material } = wallAt(vessel, testTemperatureK);
  const stress = testStress(material);
  if (stress === undefined) return missing(`proof strength of ${material}`);
  const rated = carriedAtStress(vessel, { temperatureK: testTemperatureK, stressPa: stress.stressPa }, proof);
  if (!rated.ok) return missing(rated.error.message);
  const { pressurePaGauge } = rated.value;
  return stress.fromMemory
    ? unverified(pressurePaGauge, `The proof strength of ${material} is from memory, unverified.`)
    : known(pressurePaGauge);
};

export const pressureTest = comparison({
  id: 'strength.pressure-test',
  title: 'Wall of the vessel stands its pressure test',
  group: 'strength',
  kind: 'hard',
  unit: 'Pa',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: { vessel: wallReads },
  limitOf: { vessel: wallReads },
  conditions: [],
  demand: ({ vessel }, _, proof) => demandOf(vessel, proof),
  limit: ({ vessel }, _, proof) => limitOf(vessel, proof),
  say: ({ demand, limit, parts }) =>
    `${parts.vessel.name} is tested with water at ${demand}; at 95 % of its yield strength the wall carries ${limit}.`,
  source: [
    published('2014/68/EU annex I 7.4'),
    commonPractice('test stress: proof strength at room temperature over 1.05 (EN 13445-3 clause 6)'),
  ],
});
