import { z } from 'zod';
import data from './superheat-correction.json';

const schema = z.strictObject({
  about: z.string(),
  editions: z.array(
    z.strictObject({
      edition: z.enum(['7th', '10th']),
      source: z.string().min(1),
      basis: z.enum(['published', 'common practice', 'from memory, unverified']),
      temperaturesK: z.array(z.number().positive()).min(2),
      rows: z
        .array(
          z.strictObject({
            pressurePaAbs: z.number().positive(),
            factors: z.array(z.number().positive().max(1)),
          }),
        )
        .min(2),
    }),
  ),
});

export type SuperheatTable = z.output<typeof schema>['editions'][number];

const tables = new Map(schema.parse(data).editions.map((table) => [table.edition, table]));

/** Superheat table of one edition of API 520 part I. */
export const superheatTable = (edition: '7th' | '10th'): SuperheatTable | undefined => tables.get(edition);

/** Index of the last grid point at or below x, so that the next one exists. */
const cellBelow = (grid: readonly number[], x: number): number => {
  let index = 0;
  while (index < grid.length - 2 && (grid[index + 1] ?? Infinity) <= x) index += 1;
  return index;
};

/**
 * K_SH by linear interpolation in pressure and temperature. Below the first temperature column the steam counts as
 * saturated (K_SH = 1; the table steps by at most 2 % there); pressures beside the table take its nearest row.
 */
export const superheatCorrectionOf = (
  { temperaturesK, rows }: SuperheatTable,
  pressurePaAbs: number,
  temperatureK: number,
): number => {
  const first = temperaturesK[0] ?? 0;
  if (temperatureK < first) return 1;
  const pressures = rows.map((row) => row.pressurePaAbs);
  const i = cellBelow(pressures, pressurePaAbs);
  const j = cellBelow(temperaturesK, temperatureK);
  const fraction = (grid: readonly number[], index: number, x: number): number => {
    const low = grid[index] ?? x;
    const high = grid[index + 1] ?? x;
    return Math.min(1, Math.max(0, (x - low) / (high - low)));
  };
  const u = fraction(pressures, i, pressurePaAbs);
  const v = fraction(temperaturesK, j, temperatureK);
  const at = (row: number, column: number): number => rows[row]?.factors[column] ?? 1;
  return (
    (1 - u) * ((1 - v) * at(i, j) + v * at(i, j + 1)) + u * ((1 - v) * at(i + 1, j) + v * at(i + 1, j + 1))
  );
};
