import { z } from 'zod';
import { type Kind, parseQuantity, quantityOf, type QuantityTrouble, units } from '@flangewise/quantities';

/** A quantity as it stands in an inquiry: typed ("60 bar") or with its unit apart. */
const given = z.union([
  z.string().meta({ examples: ['60 bar', '870 psi', '1.5 L'] }),
  z.strictObject({ value: z.number(), unit: z.string() }),
]);

export type Given = z.input<typeof given>;

const allowedUnits = (kind: Kind): string =>
  units[kind]
    .map((u) => u.label)
    .filter((label) => label !== '')
    .join(', ');

export const parseGiven = (value: Given, kind: Kind): ReturnType<typeof parseQuantity> =>
  typeof value === 'string' ? parseQuantity(value, kind) : quantityOf(value.value, value.unit, kind);

/** Bounds of what is worth computing, in SI; beyond them a value is a slip, not an inquiry. */
interface Plausible {
  readonly atLeast?: number;
  readonly atMost?: number;
  /** The bounds as people read them. */
  readonly words: string;
}

/** What nature forbids is told with the bounds of the field, which are the narrower ones. */
const impossibleHere = (
  { code, given: said }: QuantityTrouble,
  plausible: Plausible | undefined,
): string | undefined =>
  code === 'QUANTITY_IMPOSSIBLE' && plausible !== undefined
    ? `"${said}" is physically impossible; allowed: ${plausible.words}`
    : undefined;

/**
 * A field of an inquiry: accepts what people type and gives the SI number (a pressure gauge, a temperature in K).
 * A refusal names the value and the units or bounds that are allowed.
 */
export const measure = (kind: Kind, description: string, plausible?: Plausible) =>
  given
    .transform((value, context): number => {
      const outcome = parseGiven(value, kind);
      if (!outcome.ok) {
        context.addIssue({
          code: 'custom',
          message: impossibleHere(outcome.error, plausible) ?? outcome.error.message,
          params: { code: outcome.error.code },
        });
        return z.NEVER;
      }
      const { si } = outcome.value;
      const low = plausible?.atLeast !== undefined && si < plausible.atLeast;
      const high = plausible?.atMost !== undefined && si > plausible.atMost;
      if (plausible !== undefined && (low || high)) {
        const shown = typeof value === 'string' ? value : `${String(value.value)} ${value.unit}`;
        context.addIssue({
          code: 'custom',
          message: `"${shown}" is ${low ? 'below' : 'above'} what is allowed here: ${plausible.words}`,
          params: { code: low ? 'INPUT_TOO_SMALL' : 'INPUT_TOO_LARGE' },
        });
        return z.NEVER;
      }
      return si;
    })
    .meta({ description: `${description}. Units: ${allowedUnits(kind)}`, kind, unit: units[kind][0].code });

export const pressure = (description: string) =>
  measure('pressure', `${description} (gauge unless said otherwise)`, {
    atMost: 4e8,
    words: '0 bar(a) to 4000 bar',
  });

export const temperature = (description: string) =>
  measure('temperature', description, { atLeast: 123.15, atMost: 1273.15, words: '−150 to 1000 °C' });

export const volume = (description: string) =>
  measure('volume', description, { atLeast: 1e-7, atMost: 10, words: 'above zero, 0.1 mL to 10 000 L' });

export const viscosity = (description: string) =>
  measure('viscosity', description, { atLeast: 1e-5, atMost: 1e5, words: '0.01 to 100 000 000 mPa·s' });
