import type { StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';

/**
 * Knuckle factor β of a torispherical end for yielding of the knuckle.
 *
 *   Y = min(e/R, 0.04)   Z = log10(1/Y)   X = r/D_i   N = 1.006 − 1 / (6.2 + (90 Y)⁴)
 *   β_0.06 = N (−0.3635 Z³ + 2.2124 Z² − 3.2937 Z + 1.8873)
 *   β_0.1  = N (−0.1833 Z³ + 1.0383 Z² − 1.2943 Z + 0.837)
 *   β_0.2  = max(0.95 (0.56 − 1.94 Y − 82.5 Y²), 0.5)
 *   β linear in X between 0.06, 0.1 and 0.2
 *
 * @param thicknessOverCrown e / R [-]
 * @param knuckleOverInner   r / D_i [-], 0.06 to 0.2
 * @returns β [-]
 * @source en-13445-3:2021 §7.5.3.5, eq. 7.5-9 to 7.5-18 (from memory, unverified)
 */
export const knuckleFactor = (
  thicknessOverCrown: number,
  knuckleOverInner: number,
  log?: StepLog,
): number => {
  const Y = Math.min(thicknessOverCrown, 0.04);
  const Z = -Math.log10(Y);
  const X = knuckleOverInner;
  const N = 1.006 - 1 / (6.2 + (90 * Y) ** 4);
  const at01 = N * (((-0.1833 * Z + 1.0383) * Z - 1.2943) * Z + 0.837);
  const isSharp = X <= 0.1;
  const other = isSharp
    ? N * (((-0.3635 * Z + 2.2124) * Z - 3.2937) * Z + 1.8873)
    : Math.max(0.95 * (0.56 - 1.94 * Y - 82.5 * Y ** 2), 0.5);
  const factor = isSharp
    ? 25 * ((0.1 - X) * other + (X - 0.06) * at01)
    : X >= 0.2
      ? other
      : 10 * ((0.2 - X) * at01 + (X - 0.1) * other);
  if (log !== undefined) {
    const where = { e_R: thicknessOverCrown, Y, Z, X, N, β_01: at01, β_006: other, β_02: other };
    const steps: readonly (readonly [string, string, number, string?])[] = [
      ['Y', 'min(e_R; 0.04)', Y, 'e_R wall by crown radius; EN 13445-3 7.5.3.5'],
      ['Z', 'ln(1 / Y) / ln(10)', Z],
      ['N', '1.006 − 1 / (6.2 + (90 · Y)⁴)', N],
      ['β_01', 'N · (−0.1833 · Z³ + 1.0383 · Z² − 1.2943 · Z + 0.837)', at01],
      isSharp
        ? ['β_006', 'N · (−0.3635 · Z³ + 2.2124 · Z² − 3.2937 · Z + 1.8873)', other]
        : ['β_02', 'max(0.95 · (0.56 − 1.94 · Y − 82.5 · Y²); 0.5)', other],
      [
        'β',
        isSharp
          ? '25 · ((0.1 − X) · β_006 + (X − 0.06) · β_01)'
          : X >= 0.2
            ? 'β_02'
            : '10 · ((0.2 − X) · β_01 + (X − 0.1) · β_02)',
        factor,
        'X = r / D_i; from memory, unverified',
      ],
    ];
    for (const [symbol, formula, value, note] of steps) {
      log(formulaStep({ symbol, formula, where, value, unit: '1', note }));
    }
  }
  return factor;
};
