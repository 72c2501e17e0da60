import { type Basis, fail, type Outcome, succeed } from '@flangewise/model';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { weakestBasis } from './basis.js';
import { materialGrade, type MaterialGrade } from './material-grade.js';
import { minimumProofStrength } from './proof-strength.js';
import { strengthAt, strengthTables } from './strength-table.js';

/** A stress that a pressure part may be designed with, and what it rests on. */
export interface DesignStress {
  readonly stressPa: number;
  /** `from memory, unverified` means: never better than met with caution. */
  readonly basis: Basis;
  readonly source: string;
  /** The rule in words, for the evidence; made where it is asked for. */
  readonly rule: string;
  /** What the reader must know besides. */
  readonly note?: string;
}

const designTables = new Map(
  strengthTables
    .filter(({ quantity, level }) => quantity === 'allowable' && level !== 'higher')
    .flatMap((table) => table.names.map((name) => [name, table] as const)),
);

const noRating = (grade: MaterialGrade): Outcome<never> =>
  fail({
    code: 'CALC_MISSING_PROPERTY',
    message:
      `material: ${grade.key} has no design strength on file and carries no rating of its own. ${grade.designNote ?? ''}`.trim(),
    field: 'material',
    given: grade.key,
  });

const austenitic = (grade: MaterialGrade, temperatureK: number): Outcome<DesignStress> => {
  const proof = minimumProofStrength({ material: grade.key, proof: 'Rp1.0', temperatureK });
  if (!proof.ok) return proof;
  const { stressPa, basis, source } = proof.value;
  return succeed({
    stressPa: stressPa / 1.5,
    basis,
    source,
    get rule() {
      return `EN 13445-3 clause 6, austenitic: Rp1.0/1.5 with Rp1.0 = ${shown(stressPa / 1e6)} MPa`;
    },
  });
};

const fromProofAndTensile = (grade: MaterialGrade, temperatureK: number): Outcome<DesignStress> => {
  const proof = minimumProofStrength({ material: grade.key, proof: 'Rp0.2', temperatureK });
  if (!proof.ok) return proof;
  const tensile = grade.tensileStrength20MPa;
  if (tensile === undefined) return noRating(grade);
  const byProof = proof.value.stressPa / 1.5;
  const byTensile = (tensile.value * 1e6) / 2.4;
  const code =
    grade.designRoute === 'nickel'
      ? 'rule for steels of EN 13445-3 clause 6, applied to a nickel alloy (EN 13445-10 governs)'
      : 'EN 13445-3 clause 6';
  return succeed({
    stressPa: Math.min(byProof, byTensile),
    basis: byProof <= byTensile ? proof.value.basis : weakestBasis([proof.value.basis, tensile.basis]),
    source: byProof <= byTensile ? proof.value.source : tensile.source,
    get rule() {
      return `${code}: min(Rp0.2/1.5; Rm/2.4) with Rp0.2 = ${shown(proof.value.stressPa / 1e6)} MPa, Rm = ${shown(tensile.value)} MPa`;
    },
  });
};

const tabulated = (grade: MaterialGrade, temperatureK: number): Outcome<DesignStress> => {
  const table = designTables.get(grade.designTable ?? '');
  if (table === undefined) return noRating(grade);
  const strength = strengthAt(table, temperatureK);
  if (!strength.ok) return strength;
  return succeed({
    stressPa: strength.value.stressPa,
    basis: strength.value.basis,
    source: strength.value.source,
    rule: `allowable stress of ${table.code ?? 'the table'}, taken as design stress: it keeps 3.5 against the tensile strength where EN 13445-3 asks 2.4`,
    note: `A vessel under the Pressure Equipment Directive needs a particular material appraisal. ${grade.designNote ?? ''}`.trim(),
  });
};

/**
 * Design stress of a material at a temperature, for every material that a pressure part may be made of:
 * austenitic steel on Rp1.0 (EN 13445-3), ferritic steel and nickel alloys on Rp0.2 and Rm, titanium, zirconium
 * and alloy C-22 on the published allowable stresses of ASME. Typical strengths are never used.
 *
 * @param material     number or common name
 * @param temperatureK design temperature [K]
 * @error CALC_UNKNOWN_MATERIAL; CALC_MISSING_PROPERTY for a material without design data; CALC_OUT_OF_RANGE past the table
 */
export const designStressAt = (material: string, temperatureK: number): Outcome<DesignStress> => {
  const found = materialGrade(material);
  if (!found.ok) return found;
  const grade = found.value;
  const minC = grade.service?.minC;
  if (grade.designRoute !== 'none' && minC !== undefined && temperatureK < minC + 273.15) {
    return outOfRange({
      field: 'temperatureK',
      given: temperatureK,
      unit: 'K',
      allowed: `at least ${shown(minC + 273.15)} K for ${grade.key}; below it toughness must be shown`,
    });
  }
  switch (grade.designRoute) {
    case 'austenitic':
      return austenitic(grade, temperatureK);
    case 'ferritic':
    case 'nickel':
      return fromProofAndTensile(grade, temperatureK);
    case 'tabulated':
      return tabulated(grade, temperatureK);
    case 'none':
      return noRating(grade);
  }
};
