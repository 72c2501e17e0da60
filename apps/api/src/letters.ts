const alphabet = 26;

/**
 * What stands for a number where people read it: 1 is A, 26 is Z, 27 is AA.
 *
 * @param number of a system within its inquiry, or of a revision of an offer; from 1
 */
export function letterOf(number: number): string {
  const before = Math.floor((number - 1) / alphabet);
  const last = String.fromCharCode('A'.charCodeAt(0) + ((number - 1) % alphabet));
  return before === 0 ? last : letterOf(before) + last;
}

/** The number that people see of an inquiry or an offer: four digits, more once there are more. */
export const printedNumber = (number: number): string => String(number).padStart(4, '0');
