import { z } from 'zod';
import { currencySchema } from './currency.js';
import { measure, pressure, temperature, viscosity, volume } from './measure.js';
import { calendarDate } from './typed-text.js';

const span = <T extends z.ZodType<number>>(field: T, description: string) =>
  z
    .strictObject({ lowest: field.optional(), usual: field.optional(), highest: field.optional() })
    .superRefine(({ lowest, usual, highest }, context) => {
      const report = (path: string, message: string): void =>
        context.addIssue({ code: 'custom', path: [path], message });
      if (lowest !== undefined && highest !== undefined && lowest > highest)
        report('highest', 'lies below the lowest; give the lowest and the highest the other way round');
      if (usual !== undefined && usual < (lowest ?? usual)) report('usual', 'lies below the lowest');
      if (usual !== undefined && usual > (highest ?? usual)) report('usual', 'lies above the highest');
    })
    .meta({ description: `${description}: lowest, usual, highest. What nobody said stays out.` });

const medium = z.strictObject({
  substance: z
    .string()
    .min(1)
    .meta({ description: 'Common name or CAS number', examples: ['methanol', '67-56-1'] }),
  role: z.enum(['solvent', 'reactant', 'product', 'gas', 'catalyst', 'cleaning', 'inert gas']),
  massFraction: measure('ratio', 'Share of the liquid or solution by mass', {
    atMost: 1,
    words: '0 to 100 %',
  }).optional(),
  solvent: z.string().optional().meta({ description: 'What it is dissolved in; water where absent' }),
  dry: z
    .boolean()
    .optional()
    .meta({ description: 'Free of water; decides for titanium and chlorine, among others' }),
});

export const processKinds = [
  'hydrogenation',
  'polymerisation',
  'oxidation',
  'chlorination',
  'carbonylation',
  'screening',
  'leaching',
  'crystallisation',
  'distillation',
  'hydrolysis',
  'storage under pressure',
  'other',
] as const;

const processSchema = z.strictObject({
  kind: z.enum(processKinds).optional(),
  media: z.array(medium).default([]),
  pressure: span(pressure('Process pressure'), 'Pressure').optional(),
  pressureMeans: z
    .enum(['total', 'partial pressure of the gas'])
    .optional()
    .meta({ description: 'What the pressure means where a gas is charged over a volatile liquid' }),
  vacuum: z.boolean().optional().meta({ description: 'The vessel is also evacuated' }),
  temperature: span(temperature('Process temperature'), 'Temperature').optional(),
  viscosity: z
    .strictObject({ start: viscosity('At the start').optional(), end: viscosity('At the end').optional() })
    .optional(),
  density: measure('density', 'Density of the batch', {
    atLeast: 100,
    atMost: 5000,
    words: '100 to 5000 kg/m³',
  }).optional(),
  solids: z
    .strictObject({
      massFraction: measure('ratio', 'Solids by mass', { atMost: 0.8, words: '0 to 80 %' }).optional(),
      particleSize: measure('length', 'Particle size').optional(),
      density: measure('density', 'Density of the solid').optional(),
    })
    .optional(),
  stirringSpeed: span(
    measure('speed', 'Stirring speed', { atMost: 100, words: '0 to 6000 1/min' }),
    'Stirring speed',
  ).optional(),
  foaming: z.boolean().optional(),
  exothermic: z.boolean().optional(),
  selfReactive: z.boolean().optional(),
  heatOfReaction: measure('molarEnergy', 'Heat of reaction; negative gives heat').optional(),
  heatOfReactionPer: z.string().optional().meta({ description: 'The substance of which one mole is meant' }),
  concentration: measure('molarConcentration', 'Reactant at the start').optional(),
  peakUptake: measure('amountFlow', 'Highest gas uptake').optional(),
  calorimetry: z.boolean().optional().meta({ description: 'Calorimetric data of the runaway are at hand' }),
  regulatorKv: z
    .number()
    .positive()
    .optional()
    .meta({ unit: 'm3/h', description: "Flow coefficient Kv of the client's gas regulator" }),
  supplyPressure: pressure('Pressure of the gas supply').optional(),
  heatUpTime: measure('time', 'Wanted time from lowest to highest temperature').optional(),
});

const setSchema = z.strictObject({
  label: z.string().optional(),
  count: z.int().min(1).max(48).default(1).meta({ description: 'How many of these at once' }),
  batchVolume: volume('Liquid in the vessel').optional(),
  vesselVolume: volume('Volume of the vessel').optional(),
  statedVolume: volume('A volume of which nobody said whether it is batch or vessel').optional(),
  pressure: span(pressure('Process pressure of this set'), 'Pressure of this set').optional(),
  temperature: span(temperature('Process temperature of this set'), 'Temperature of this set').optional(),
  construction: z.enum(['metal', 'glass', 'lined']).optional(),
  material: z
    .string()
    .optional()
    .meta({ description: 'Wetted material wished for', examples: ['titanium', '1.4404'] }),
});

const siteSchema = z.strictObject({
  country: z.string().optional(),
  zone: z
    .enum(['none', '0', '1', '2', '20', '21', '22'])
    .optional()
    .meta({ description: 'Hazardous area around the vessel' }),
  zoneGas: z
    .string()
    .optional()
    .meta({ description: 'Gas that makes the zone, where it is not a medium of the process' }),
  ceilingHeight: measure('length', 'Floor to ceiling', {
    atLeast: 1,
    atMost: 30,
    words: '1 to 30 m',
  }).optional(),
  coolingWater: z.boolean().optional(),
  electricalSupply: z.string().optional(),
});

const requirementsSchema = z.strictObject({
  noMetalContact: z.boolean().optional().meta({ description: 'No metal may touch the product' }),
  seeInside: z.boolean().optional(),
  bottomOutlet: z.boolean().optional(),
  openingsPerDay: z.number().min(0).max(200).optional(),
  uptakeRecorded: z.boolean().optional(),
  inerting: z.boolean().optional(),
  tilt: z.boolean().optional(),
  sampling: z.boolean().optional(),
  dosingAgainstPressure: z.boolean().optional(),
  refluxCondenser: z.boolean().optional(),
  catalystBasket: z.boolean().optional(),
  processProbes: z.array(z.enum(['pH', 'turbidity', 'conductivity', 'particle view', 'torque'])).optional(),
  freePorts: z
    .strictObject({
      count: z.int().min(1).max(20).meta({ description: 'How many' }),
      size: measure('length', 'At least this size', {
        atLeast: 0.001,
        atMost: 0.5,
        words: '1 to 500 mm',
      }).optional(),
    })
    .optional()
    .meta({ description: 'Ports of the cover that stay free' }),
  materialCertificates: z.boolean().optional(),
  qualificationPapers: z.boolean().optional(),
  impeller: z.string().optional(),
  families: z.array(z.string()).optional().meta({ description: 'Only these families' }),
});

const commercialSchema = z.strictObject({
  currency: currencySchema.optional(),
  budget: z
    .string()
    .regex(/^\d+(\.\d{1,2})?$/, 'an amount like 25000 or 25000.50 is allowed')
    .optional(),
  deliveryWeeks: z.number().positive().optional(),
  endUse: z.string().optional(),
});

/**
 * What the process needs, as the client said it: quantities as typed, unknowns left out.
 * Everything that is left out and matters comes back as an open point.
 */
export const inquirySchema = z.strictObject({
  title: z.string().min(1).max(200),
  client: z.string().optional(),
  contact: z.string().optional(),
  received: calendarDate.optional(),
  statement: z.string().optional().meta({ description: 'The text as it came in' }),
  assumptions: z.array(z.string()).default([]).meta({ description: 'What was assumed beyond the statement' }),
  arrangement: z
    .enum(['alternate', 'parallel'])
    .optional()
    .meta({ description: 'Several sets on one frame: one mounted at a time, or working at once' }),
  process: processSchema.default({ media: [] }),
  sets: z
    .array(setSchema)
    .min(1)
    .max(8)
    .default([{ count: 1 }]),
  site: siteSchema.default({}),
  requirements: requirementsSchema.default({}),
  commercial: commercialSchema.default({}),
});

/** As it is stored and typed. */
export type InquiryInput = z.input<typeof inquirySchema>;
/** Read: SI numbers, pressures gauge. */
export type Inquiry = z.output<typeof inquirySchema>;
export type Medium = z.output<typeof medium>;
