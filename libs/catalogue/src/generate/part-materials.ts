import { materialDensity } from '@flangewise/engineering';
import { z } from 'zod';
import data from '../designs/part-materials.json' with { type: 'json' };

const materialSchema = z.strictObject({
  material: z.string().meta({ description: 'Name in the material tables' }),
  priceFactor: z.number().positive().meta({ description: 'Price over that of the same part in 1.4404' }),
  furtherDays: z.int().min(0).meta({ unit: 'd', description: 'Working days that it takes longer' }),
  minC: z.number().meta({ unit: 'Cel', description: 'Lowest temperature of use' }),
  maxC: z.number().meta({ unit: 'Cel', description: 'Highest temperature of use' }),
});

export type PartMaterial = z.output<typeof materialSchema>;

const materials = new Map(
  z
    .array(materialSchema)
    .parse(data.materials)
    .map((row) => [row.material, row]),
);

/** What the maker knows of a material of which parts are made. */
export const partMaterial = (material: string): PartMaterial => {
  const found = materials.get(material);
  if (found === undefined)
    throw new Error(
      `no parts are made of ${material}; part-materials.json has ${[...materials.keys()].join(', ')}`,
    );
  return found;
};

/** Materials that only cover a core of steel, which is what weighs. */
const onSteel: readonly string[] = ['PTFE', 'tantalum'];

/** Density of what a part is made of [kg/m³]; a coating or cladding weighs as its core of 1.4404. */
export const partDensity = ({ material }: PartMaterial): number => {
  const density = materialDensity(onSteel.includes(material) ? '1.4404' : material);
  if (!density.ok) throw new Error(density.error.message);
  return density.value.value;
};

/** `PTFE-coated`, `tantalum-clad`, else the material: what a part of it is called. */
export const finishWord = ({ material }: PartMaterial, polymer: string): string =>
  material === 'PTFE' ? `PTFE-${polymer}` : material === 'tantalum' ? 'tantalum-clad' : material;
