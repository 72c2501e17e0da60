import { thinSpace } from './format-quantity.js';

/** From here on nobody reads every digit. */
const exactBelow = 1_000_000n;

const raised = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];

/**
 * A whole number that may be too large for a JavaScript number, for people: "62 373" to the last digit below a million, beyond
 * that "about 1.9 × 10¹⁸".
 *
 * @param count digits, as JSON carries them
 */
export const formatCount = (count: string): string => {
  const value = BigInt(count);
  if (value < exactBelow) {
    const digits = value.toString();
    return digits.length > 4 ? digits.replace(/\B(?=(\d{3})+$)/g, thinSpace) : digits;
  }
  // Two digits, rounded; 9.96 becomes 1 with one more behind it.
  const length = value.toString().length;
  const unit = 10n ** BigInt(length - 2);
  const tenths = (value + unit / 2n) / unit;
  const [lead, power] = tenths === 100n ? [10n, length] : [tenths, length - 1];
  const [whole, fraction] = [lead / 10n, lead % 10n];
  const exponent = [...String(power)].map((digit) => raised[Number(digit)]).join('');
  const factor = fraction === 0n ? String(whole) : `${String(whole)}.${String(fraction)}`;
  return `about ${factor}${thinSpace}×${thinSpace}10${exponent}`;
};
