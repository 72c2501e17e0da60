import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { fromMemory, published } from '../source-reference.js';
import { shown } from '../shown.js';
import table from './bolt-classes.json' with { type: 'json' };
import { closureLength } from './closure-fields.js';

export const boltClasses: readonly string[] = table.rows.map((row) => row.class);

/** Diameter up to which class 8.8 has the lower proof stress [m]. */
const m16 = 0.016;

/**
 * Proof stress of a bolt at room temperature; Rp0.2 for stainless classes.
 *
 * @param boltClass property class of ISO 898-1 or ISO 3506-1
 * @param diameterM nominal; class 8.8 has 580 MPa to M16, 600 MPa above [m]
 * @returns proofStressPa [Pa]
 * @range the classes listed
 * @error CALC_INVALID_INPUT for another class
 * @source iso-898-1:2013; iso-3506-1:2020 (A2-50 from memory, unverified)
 */
export const boltProofStress = calculation({
  id: 'closure.boltProofStress',
  title: 'Proof stress of a bolt',
  inputs: z.strictObject({
    boltClass: z.enum(boltClasses).meta({ description: 'Property class' }),
    diameterM: closureLength('d', 'Nominal diameter'),
  }),
  outputs: z.strictObject({
    proofStressPa: quantity({ unit: 'Pa', symbol: 'S_p', description: 'Proof stress at room temperature' }),
  }),
  formula: String.raw`S_p \text{ from the property class}`,
  range: 'ISO 898-1 classes 4.6 to 12.9, ISO 3506-1 classes A2-50, A4-70, A4-80; room temperature',
  source: [published('iso-898-1:2013'), published('iso-3506-1:2020'), fromMemory('iso-3506-1:2020 A2-50')],
  compute: ({ boltClass, diameterM }, log) => {
    const row = table.rows.find((candidate) => candidate.class === boltClass);
    if (row === undefined) return missingInput('boltClass', `one of ${boltClasses.join(', ')}`);
    const proofStressPa =
      diameterM > m16 * (1 + 1e-9) ? (row.proofStressAboveM16Pa ?? row.proofStressPa) : row.proofStressPa;
    log?.({
      symbol: 'S_p',
      formula: row.source,
      substituted: `class ${boltClass}, d = ${shown(diameterM)} m`,
      value: proofStressPa,
      unit: 'Pa',
    });
    return succeed({ proofStressPa });
  },
});
