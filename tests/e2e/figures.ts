import type { SystemInput } from '@flangewise/model';
import { checkOf } from './command-line.js';
import { numbersIn } from './prices.js';

const isSystem = (value: object): value is SystemInput => 'inquiry' in value && 'sets' in value;

/** Every system that stands somewhere in data. */
const systemsIn = (value: unknown): readonly SystemInput[] => {
  if (typeof value !== 'object' || value === null) return [];
  if (isSystem(value)) return [value];
  return Object.values(value).flatMap(systemsIn);
};

const parsed = (body: string): unknown => {
  try {
    return JSON.parse(body) as unknown;
  } catch {
    return undefined;
  }
};

/**
 * What the checks of the systems in some answers say in numbers. The command line works them out without any price: a
 * figure that is a list price too gives nothing away.
 */
export async function figuresOf(bodies: readonly string[]): Promise<ReadonlySet<number>> {
  const systems = new Set(
    bodies.flatMap((body) => systemsIn(parsed(body)).map((one) => JSON.stringify(one))),
  );
  const said = new Set<number>();
  for (const system of systems)
    for (const number of numbersIn(JSON.stringify(await checkOf(JSON.parse(system) as SystemInput))))
      said.add(number);
  return said;
}
