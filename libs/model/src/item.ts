import { z } from 'zod';
import { coverPort } from './cover-port.js';
import { currencySchema } from './currency.js';
import { itemLife, itemNumber } from './item-life.js';
import { alloySurchargeSchema, quantityStepSchema, serviceRateSchema } from './price-terms.js';
import { type SlotName } from './slot.js';
import { calendarDate } from './typed-text.js';

const quantity = (unit: string, description: string, schema: z.ZodNumber = z.number().min(0)) =>
  schema.meta({ unit, description });

const pascalGauge = (description: string) => quantity('Pa', `${description} (gauge)`);
const kelvin = (description: string) => quantity('K', description);
const metre = (description: string) => quantity('m', description);

/** Protection marking of electrical equipment (2014/34/EU, IEC 60079-0). */
export const protectionMarking = z.strictObject({
  category: z.enum(['1G', '2G', '3G', '1D', '2D', '3D']),
  gasGroup: z.enum(['IIA', 'IIB', 'IIC']),
  temperatureClass: z.enum(['T1', 'T2', 'T3', 'T4', 'T5', 'T6']),
});

/** Pressure and temperature that a part stands. */
const rating = z.strictObject({
  maxPressurePaGauge: pascalGauge('Highest pressure, PS'),
  minTemperatureK: kelvin('Lowest temperature'),
  maxTemperatureK: kelvin('Highest temperature, TS'),
  vacuum: z.boolean().meta({ description: 'Stands full vacuum' }),
});

const common = {
  id: itemNumber,
  name: z.string().min(1),
  families: z.array(z.string()).min(1).meta({ description: 'Families it belongs to; "any" fits all' }),
  massKg: quantity('kg', 'Mass'),
  leadTimeDays: z.int().min(0).meta({ unit: 'd', description: 'Working days until it can be shipped alone' }),
  /** Materials that touch product or gas, by their name in the material tables. */
  wetted: z.array(z.string()),
  rating: rating.optional(),
  electrical: z
    .strictObject({
      powerW: quantity('W', 'Electrical load'),
      protection: protectionMarking.nullable().meta({ description: 'null: not for hazardous areas' }),
      placement: z.enum(['at the vessel', 'outside the area']),
    })
    .optional(),
  /** Sizes of the cover ports that it occupies. */
  portsM: z.array(metre('Port size')).default([]),
  /** Ports that it offers in turn, each smaller than any that it occupies. */
  givesPortsM: z.array(metre('Port that it offers')).optional(),
  /** How far it reaches below the sealing plane. */
  reachM: metre('Reach below the sealing plane').optional(),
  ...itemLife,
};

const item = <S extends SlotName, T extends z.ZodRawShape>(slot: S, shape: T) =>
  z.strictObject({ slot: z.literal(slot), ...common, ...shape });

/** Sealing bores are the joints of the range: parts of one bore fit each other. */
const bore = z
  .int()
  .positive()
  .meta({ description: 'Sealing bore code, nominal diameter in mm', unit: 'mm' });

const special = z
  .boolean()
  .optional()
  .meta({ description: 'Made for one system, to be reviewed and released' });

const vesselGeometry = z.strictObject({
  innerDiameterM: metre('Inner diameter'),
  cylinderLengthM: metre('Length of the cylindrical part, sealing plane to end'),
  wallThicknessM: metre('Wall of the cylinder'),
  endForm: z.enum([
    'flat',
    'torispherical DIN 28011',
    'torispherical DIN 28013',
    '2:1 ellipsoidal',
    'hemispherical',
  ]),
  endThicknessM: metre('Wall of the end'),
  flangeOuterDiameterM: metre('Outer diameter of the rim'),
  flangeHeightM: metre('Height of the rim'),
});

/** Sorts of stirrers. */
export const impeller = z.enum([
  'disc turbine',
  'pitched blade turbine',
  'paddle',
  'propeller',
  'anchor',
  'double helical ribbon',
  'hollow shaft turbine',
  'magnetic bar',
]);

const itemShapes = [
  item('vessel', {
    family: z.string(),
    construction: z.enum(['metal', 'glass', 'lined']),
    material: z.string().meta({ description: 'What the product touches' }),
    carrier: z
      .string()
      .nullable()
      .meta({ description: 'What carries the pressure, where a lining touches the product' }),
    liningThicknessM: metre('Lining between the inner diameter and the wall that carries').optional(),
    geometry: vesselGeometry,
    bore,
    nominalVolumeL: quantity('L', 'Nominal volume'),
    innerVolumeL: quantity('L', 'Inner volume, computed from the geometry'),
    depthM: metre('Depth below the sealing plane'),
    smallestFillL: quantity('L', 'Smallest batch that its stirrers reach'),
    corrosionAllowanceM: metre('Corrosion allowance in the rating').default(0),
    jacket: z
      .strictObject({
        maxPressurePaGauge: pascalGauge('PS of the jacket'),
        areaM2: quantity('m2', 'Heated area'),
        gapM: metre('Gap between vessel and jacket wall'),
      })
      .nullable(),
    bottomPortM: metre('Free diameter of the bottom port').nullable(),
    thermalShockK: quantity('K', 'Temperature difference across the wall that it stands').nullable(),
    special,
  }),
  item('material', { material: z.string(), construction: z.enum(['metal', 'glass', 'lined']) }),
  item('closure', {
    kind: z.enum(['bolted', 'clamp', 'segment']),
    bore,
    ratedForceN: quantity('N', 'End force that it carries'),
    openingTimeS: quantity('s', 'Time to open or close'),
    interlock: z.boolean().meta({ description: 'Cannot be opened until the absence of pressure is proved' }),
    needsLift: z.boolean(),
    bolts: z
      .strictObject({
        count: z.int().positive(),
        diameterM: metre('Bolt diameter'),
        pitchM: metre('Thread pitch'),
      })
      .nullable(),
  }),
  item('seal', {
    kind: z.enum(['O-ring', 'flat gasket', 'metal ring']),
    material: z.string(),
    bore,
    diameterM: metre('Diameter at which it seals'),
    gasketFactor: quantity('1', 'Factor m'),
    seatingStressPa: quantity('Pa', 'Seating stress y'),
    standsDecompression: z.boolean().meta({ description: 'Stands rapid gas decompression' }),
  }),
  item('cover', {
    bore,
    material: z.string(),
    construction: z.enum(['metal', 'glass', 'lined']),
    carrier: z.string().meta({ description: 'What carries the pressure under a lining' }).optional(),
    thicknessM: metre('Thickness'),
    ports: z.array(coverPort),
    bushing: z.enum(['none', 'small', 'medium', 'large']),
    special,
  }),
  item('stirrer', {
    impeller,
    material: z.string(),
    diameterM: metre('Impeller diameter'),
    bladeCount: z.int().min(1),
    bladeWidthM: metre('Blade width'),
    shaftDiameterM: metre('Shaft that it fits'),
    minViscosityPaS: quantity('Pa.s', 'Lowest viscosity it is meant for'),
    maxViscosityPaS: quantity('Pa.s', 'Highest viscosity it is meant for'),
    maxSpeedPerS: quantity('/s', 'Highest speed'),
    inducesGas: z.boolean(),
  }),
  item('shaft', {
    material: z.string(),
    lengthM: metre('Free length below the bearing'),
    diameterM: metre('Diameter'),
    bearingSpanM: metre('Distance of the bearings'),
    bore: bore.nullable(),
    special,
  }),
  item('baffles', { material: z.string(), bore, count: z.int().positive(), widthM: metre('Width') }),
  item('coupling', {
    kind: z.enum(['magnetic', 'magnetic, metal-free']),
    bushing: z.enum(['none', 'small', 'medium', 'large']),
    ratedTorqueNm: quantity('N.m', 'Torque at 20 °C before it slips'),
    magnet: z
      .enum(['NdFeB', 'SmCo5', 'Sm2Co17', 'hard ferrite'])
      .meta({ description: 'Magnet material, by its name in the tables' }),
    cooled: z.boolean(),
    maxMagnetTemperatureK: kelvin('Highest temperature of the magnets'),
    maxSpeedPerS: quantity('/s', 'Highest speed'),
    shaftDiameterM: metre('Shaft that it takes'),
  }),
  item('heater', {
    bore,
    maxVesselDiameterM: metre('Largest vessel that it takes'),
    powerW: quantity('W', 'Heating power'),
    maxWallTemperatureK: kelvin('Highest wall temperature'),
  }),
  item('coil', {
    bore,
    material: z.string(),
    tubeDiameterM: metre('Tube outer diameter'),
    coilDiameterM: metre('Mean diameter of the coil'),
    turns: z.number().positive(),
    areaM2: quantity('m2', 'Outer area'),
    innerClearanceM: metre('Free diameter inside the coil'),
  }),
  item('temperatureProbe', { kind: z.enum(['thermowell', 'sheathed sensor', 'probe in the bottom valve']) }),
  item('limiter', { limitRangeK: z.strictObject({ lowest: kelvin('Lowest'), highest: kelvin('Highest') }) }),
  item('relief', {
    burstPressurePaGauge: pascalGauge('Specified burst pressure at temperature'),
    tolerance: quantity('1', 'Performance tolerance, plus and minus', z.number().min(0).max(0.2)),
    operatingRatio: quantity(
      '1',
      'Highest operating pressure over lowest burst pressure',
      z.number().min(0.5).max(1),
    ),
    areaM2: quantity('m2', 'Free flow area'),
    material: z.string(),
    vacuumSupport: z.boolean(),
    indicator: z.boolean(),
  }),
  item('ventLine', {
    diameterM: metre('Inner diameter'),
    kind: z.enum(['to outside', 'to catch tank', 'to scrubber']),
  }),
  item('pressureGauge', { rangePaGauge: pascalGauge('End of the range'), transmitter: z.boolean() }),
  item('gasLimit', {
    kind: z.enum(['relief valve in the feed', 'pressure limiter', 'own connector']),
    setPressurePaGauge: pascalGauge('Highest pressure that it lets through'),
  }),
  item('gasInlet', { kind: z.enum(['dip tube', 'wall port']), material: z.string() }),
  item('sampling', { kind: z.enum(['dip tube with valve', 'sample lock']), material: z.string() }),
  item('bottomValve', {
    kind: z.enum(['flush plug', 'ball valve']),
    diameterM: metre('Free bore'),
    material: z.string(),
  }),
  item('sightGlass', { diameterM: metre('View'), lamp: z.boolean() }),
  item('charging', {
    kind: z.enum(['solids funnel', 'liquids funnel', 'burette against pressure']),
    volumeL: quantity('L', 'Volume'),
  }),
  item('condenser', { areaM2: quantity('m2', 'Area'), material: z.string() }),
  item('portPiece', { material: z.string() }),
  item('basket', { kind: z.enum(['static', 'rotating']), bore }),
  item('processProbe', { kind: z.enum(['pH', 'turbidity', 'conductivity', 'particle view', 'torque']) }),
  item('shield', {
    maxDiameterM: metre('Largest vessel, with jacket'),
    maxHeightM: metre('Largest height'),
    interlock: z.boolean(),
  }),
  item('frame', {
    maxSets: z.int().positive(),
    maxMassKg: quantity('kg', 'Mass that it carries'),
    heightM: metre('Floor to sealing plane'),
    topHeightM: metre('Floor to the top of the drive'),
    bores: z.array(bore),
  }),
  item('lift', {
    kind: z.enum(['hand crank', 'electric', 'electric with tilt']),
    moves: z.enum(['cover', 'vessel']),
    capacityKg: quantity('kg', 'Mass that it lifts'),
    strokeM: metre('Stroke'),
    tilts: z.boolean(),
  }),
  item('drive', {
    powerW: quantity('W', 'Shaft power'),
    maxTorqueNm: quantity('N.m', 'Torque, continuous'),
    minSpeedPerS: quantity('/s', 'Lowest speed'),
    maxSpeedPerS: quantity('/s', 'Highest speed'),
  }),
  item('circulator', {
    heatingPowerW: quantity('W', 'Heating power'),
    coolingPowerW: z
      .array(
        z.strictObject({ temperatureK: kelvin('Fluid temperature'), powerW: quantity('W', 'Cooling power') }),
      )
      .meta({ description: 'Cooling power over temperature' }),
    minTemperatureK: kelvin('Lowest fluid temperature'),
    maxTemperatureK: kelvin('Highest fluid temperature'),
    flowM3PerS: quantity('m3/s', 'Flow'),
    pumpPressurePaGauge: pascalGauge('Highest pump pressure'),
    pressureControlled: z.boolean().meta({ description: 'Pump pressure can be limited' }),
  }),
  item('fluid', {
    fluid: z
      .string()
      .meta({ description: 'Name in the table of heat-transfer fluids, or a generic description' }),
    minTemperatureK: kelvin('Lowest temperature'),
    maxTemperatureK: kelvin('Highest temperature'),
    densityKgPerM3: quantity('kg/m3', 'Density'),
    heatCapacityJPerKgK: quantity('J/(kg.K)', 'Heat capacity'),
  }),
  item('gasSupply', {
    kind: z.enum(['pressure regulator', 'mass-flow controller', 'dosing reservoir']),
    maxOutletPressurePaGauge: pascalGauge('Highest outlet pressure that can be set'),
    flowCoefficientKv: quantity('m3/h', 'Flow coefficient Kv of the regulator').nullable(),
    reservoirVolumeL: quantity('L', 'Volume of the reservoir').nullable(),
    reservoirPressurePaGauge: pascalGauge('Highest pressure of the reservoir').nullable(),
    recordsUptake: z.boolean(),
    gases: z.array(z.string()).meta({ description: 'Gases that it may carry' }),
  }),
  item('control', {
    channels: z.int().positive(),
    recordsUptake: z.boolean(),
    recipes: z.boolean(),
    loops: z.int().positive().meta({ description: 'Vessel sets that it controls at once' }),
  }),
  item('certificates', { contains: z.array(z.string()) }),
  item('qualification', { contains: z.array(z.string()) }),
] as const;

/** An item of the range; its slot decides its attributes. Prices stand in price lists, never here. */
export const itemSchema = z.discriminatedUnion('slot', [...itemShapes]);

export type Item = z.output<typeof itemSchema>;
export type ItemInput = z.input<typeof itemSchema>;
export type ItemOf<S extends SlotName> = Extract<Item, { slot: S }>;

export type VesselGeometry = z.output<typeof vesselGeometry>;
export type Impeller = z.output<typeof impeller>;

/** What special vessels cost: the blank, the work on it, and design, drawings and review. */
export const specialRatesSchema = z.strictObject({
  materials: z.array(
    z.strictObject({
      material: z.string(),
      pricePerKg: z.number().positive().meta({ description: 'Price of the blank, per kilogram' }),
      machiningPerKg: z
        .number()
        .positive()
        .meta({ description: 'Work, per kilogram of the finished vessel' }),
    }),
  ),
  engineering: z.number().min(0).meta({ description: 'Design, drawings and review of one special vessel' }),
});

export type SpecialRates = z.output<typeof specialRatesSchema>;

/** What everything costs, in one currency. */
export const priceListSchema = z.strictObject({
  id: z.string(),
  currency: currencySchema,
  validFrom: calendarDate,
  validUntil: calendarDate,
  /** Whole list prices by item, as text. */
  prices: z.record(z.string(), z.string().regex(/^\d+(\.\d{2})?$/)),
  /** Without them special vessels are computed but not priced. */
  specialRates: specialRatesSchema.optional(),
  alloySurcharges: z.array(alloySurchargeSchema).optional(),
  quantitySteps: z.array(quantityStepSchema).optional(),
  serviceRates: z.array(serviceRateSchema).optional(),
});

export type PriceList = z.output<typeof priceListSchema>;

export const catalogueSchema = z.strictObject({
  revision: z.string(),
  maker: z.string(),
  items: z.array(itemSchema),
  priceLists: z.array(priceListSchema),
});

export type Catalogue = z.output<typeof catalogueSchema>;
