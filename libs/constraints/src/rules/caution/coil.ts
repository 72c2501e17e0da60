import { caution } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Above this tap water in a shut coil boils [K]. */
const boilingK = 373.15;

export const coilHazards = judgement({
  id: 'caution.cooling-coil',
  title: 'A cooling coil is a hazard too',
  group: 'heat',
  kind: 'caution',
  of: { coil: ['material'] },
  conditions: ['temperatureMaxK'],
  judge: ({ coil }, { temperatureMaxK }) => {
    if (coil === null) return undefined;
    const steam =
      temperatureMaxK !== undefined && temperatureMaxK > boilingK
        ? ' Tap water boils in it above 100 °C: drain it while heating, open the water slowly, and lead the outlet to a safe drain.'
        : '';
    return caution(
      `${coil.name}: process pressure presses on it from outside, and a leak lets water into the batch or product into the water; a check valve keeps it from flowing back.${steam}`,
    );
  },
  met: 'No coil.',
  source: [commonPractice('pressure from outside, steam lock, leak into the batch, backflow')],
});
