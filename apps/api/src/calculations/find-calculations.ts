import { calculations, type Calculation } from '@flangewise/engineering';
import { z } from 'zod';

/** A calculation as people choose it: what it takes and gives, over which inputs it holds, where the method comes from. */
const described = ({ id, title, inputs, outputs, formula, range, source }: Calculation) => ({
  id,
  title,
  inputs: z.toJSONSchema(inputs, { io: 'input' }) as Record<string, unknown>,
  outputs: z.toJSONSchema(outputs) as Record<string, unknown>,
  formula,
  range,
  source: [...source],
});

let all: readonly ReturnType<typeof described>[] | undefined;

/** Every public calculation. */
export const findCalculations = () => (all ??= calculations.map(described));
