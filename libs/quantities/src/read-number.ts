/** What stands at the head of a typed quantity, and what follows it. */
export type NumberReading =
  | { readonly as: 'number'; readonly value: number; readonly rest: string }
  /** A comma that may set thousands apart or begin a fraction: both readings. */
  | { readonly as: 'either'; readonly readings: readonly [fraction: number, thousands: number] }
  | { readonly as: 'nothing' };

/** Thousands are groups of exactly three digits, all set apart by the same sign. */
const blankGroups = String.raw`(?<blanks>\d{1,3}(?<gap>[\s'’])\d{3}(?:\k<gap>\d{3})*(?:[.,]\d+)?)`;
const commaGroups = String.raw`(?<commas>\d{1,3}(?:(?:,\d{3})+\.\d+|(?:,\d{3}){2,}))`;
const pointGroups = String.raw`(?<points>\d{1,3}(?:(?:\.\d{3})+,\d+|(?:\.\d{3}){2,}))`;
const ungrouped = String.raw`(?<digits>\d*[.,]?\d+)`;

const pattern = new RegExp(
  String.raw`^\s*(?<sign>[+\-−–]?)\s*(?:${blankGroups}|${commaGroups}|${pointGroups}|${ungrouped})` +
    String.raw`(?![.,]?\d)(?<power>[eE][+-]?\d+)?\s*(?<rest>.*?)\s*$`,
  'u',
);

/** Never 0 before the comma: thousands do not begin with it. */
const eitherWay = /^[1-9]\d{0,2},\d{3}$/;

/** The digits with a decimal point and nothing between thousands. */
const decimal = ({ blanks, commas, points, digits }: Readonly<Record<string, string | undefined>>): string =>
  blanks?.replace(/[\s'’]/g, '').replace(',', '.') ??
  commas?.replaceAll(',', '') ??
  points?.replaceAll('.', '').replace(',', '.') ??
  digits?.replace(',', '.') ??
  '';

/**
 * Reads the number at the head of "1 000 1/min", "1,5 L", "1,200.5 psi". A blank belongs to the number only before
 * exactly three digits: in "600 1/min" it ends it.
 */
export const readNumber = (text: string): NumberReading => {
  const found = pattern.exec(text)?.groups;
  if (found === undefined) return { as: 'nothing' };
  const { digits = '', power = '', rest = '' } = found;
  const sign = /[-−–]/.test(found['sign'] ?? '') ? -1 : 1;
  if (power === '' && eitherWay.test(digits))
    return {
      as: 'either',
      readings: [sign * Number(digits.replace(',', '.')), sign * Number(digits.replace(',', ''))],
    };
  return { as: 'number', value: sign * Number(decimal(found) + power), rest };
};
