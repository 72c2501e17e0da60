import type { Item, ItemOf, SlotName } from '@flangewise/model';
import { formatQuantity, type Kind } from '@flangewise/quantities';

const quantity = (kind: Kind, unit?: string) => (si: number) =>
  formatQuantity(si, kind, unit === undefined ? {} : { unit });

const length = quantity('length');
const pressure = quantity('pressure');
const temperature = quantity('temperature');
const torque = quantity('torque');
const speed = quantity('speed');
const force = quantity('force');
const area = quantity('area');
const mass = quantity('mass');
const viscosity = quantity('viscosity');
const density = quantity('density');
const power = (watt: number): string => formatQuantity(watt, 'power', { unit: watt < 1000 ? 'W' : 'kW' });
const volume = (litre: number): string =>
  formatQuantity(litre / 1000, 'volume', { unit: litre < 1 ? 'mL' : 'L' });
const between = (lowest: number, highest: number, text: (si: number) => string): string =>
  `${text(lowest)} to ${text(highest)}`;
const bore = (code: number): string => `bore ${String(code)}`;
const when = (holds: boolean, text: string): readonly string[] => (holds ? [text] : []);

type ValuesOf = { readonly [S in SlotName]: (item: ItemOf<S>) => readonly string[] };

/** What an engineer asks first of a part in each slot, beside pressure, temperature and mass. */
const valuesOf: ValuesOf = {
  vessel: ({ innerVolumeL, depthM, geometry, jacket, bottomPortM, bore: code }) => [
    `holds ${volume(innerVolumeL)}`,
    `Ø ${length(geometry.innerDiameterM)}, ${length(depthM)} deep`,
    bore(code),
    jacket === null ? 'no jacket' : `jacket ${pressure(jacket.maxPressurePaGauge)}`,
    ...when(bottomPortM !== null, 'bottom port'),
  ],
  material: ({ construction }) => [construction],
  closure: ({ kind, bore: code, ratedForceN, interlock, needsLift }) => [
    kind,
    bore(code),
    `carries ${force(ratedForceN)}`,
    ...when(interlock, 'interlock'),
    ...when(needsLift, 'needs a lift'),
  ],
  seal: ({ kind, material, bore: code, standsDecompression }) => [
    kind,
    material,
    bore(code),
    ...when(standsDecompression, 'stands rapid decompression'),
  ],
  cover: ({ bore: code, material, ports, bushing }) => [
    bore(code),
    material,
    `${String(ports.length)} ports`,
    bushing === 'none' ? 'no shaft' : `${bushing} shaft bushing`,
  ],
  stirrer: (one) => [
    one.impeller,
    `Ø ${length(one.diameterM)}`,
    `${between(one.minViscosityPaS, one.maxViscosityPaS, viscosity)}`,
    `up to ${speed(one.maxSpeedPerS)}`,
    ...when(one.inducesGas, 'draws gas in'),
  ],
  shaft: ({ diameterM, lengthM, material }) => [
    `Ø ${length(diameterM)}`,
    `${length(lengthM)} free`,
    material,
  ],
  baffles: ({ count, widthM, bore: code }) => [`${String(count)} × ${length(widthM)}`, bore(code)],
  coupling: ({ kind, ratedTorqueNm, maxSpeedPerS, magnet, cooled }) => [
    kind,
    `${torque(ratedTorqueNm)} at ${temperature(293.15)}`,
    `up to ${speed(maxSpeedPerS)}`,
    magnet,
    ...when(cooled, 'cooled'),
  ],
  heater: ({ powerW, bore: code, maxWallTemperatureK }) => [
    power(powerW),
    bore(code),
    `wall up to ${temperature(maxWallTemperatureK)}`,
  ],
  coil: ({ areaM2, bore: code, turns, material }) => [
    area(areaM2),
    bore(code),
    `${String(turns)} turns`,
    material,
  ],
  temperatureProbe: ({ kind }) => [kind],
  limiter: ({ limitRangeK }) => [`set ${between(limitRangeK.lowest, limitRangeK.highest, temperature)}`],
  relief: ({ burstPressurePaGauge, areaM2, material, vacuumSupport }) => [
    `bursts at ${pressure(burstPressurePaGauge)}`,
    formatQuantity(areaM2, 'area', { unit: 'mm2' }),
    material,
    ...when(vacuumSupport, 'vacuum support'),
  ],
  ventLine: ({ kind, diameterM }) => [kind, `Ø ${length(diameterM)}`],
  pressureGauge: ({ rangePaGauge, transmitter }) => [
    `up to ${pressure(rangePaGauge)}`,
    transmitter ? 'with transmitter' : 'dial',
  ],
  gasLimit: ({ kind, setPressurePaGauge }) => [kind, `at most ${pressure(setPressurePaGauge)}`],
  gasInlet: ({ kind, material }) => [kind, material],
  sampling: ({ kind, material }) => [kind, material],
  bottomValve: ({ kind, diameterM, material }) => [kind, `Ø ${length(diameterM)}`, material],
  sightGlass: ({ diameterM, lamp }) => [`view Ø ${length(diameterM)}`, lamp ? 'with lamp' : 'no lamp'],
  charging: ({ kind, volumeL }) => [kind, volume(volumeL)],
  portPiece: ({ givesPortsM, material }) => [(givesPortsM ?? []).map(length).join(', '), material],
  condenser: ({ areaM2, material }) => [area(areaM2), material],
  basket: ({ kind, bore: code }) => [kind, bore(code)],
  processProbe: ({ kind }) => [kind],
  shield: ({ maxDiameterM, maxHeightM, interlock }) => [
    `vessels up to Ø ${length(maxDiameterM)}, ${length(maxHeightM)} high`,
    ...when(interlock, 'interlock'),
  ],
  frame: ({ maxSets, maxMassKg, topHeightM, bores }) => [
    maxSets === 1 ? 'one vessel set' : `up to ${String(maxSets)} vessel sets`,
    `carries ${mass(maxMassKg)}`,
    `${length(topHeightM)} high`,
    `bores ${bores.join(', ')}`,
  ],
  lift: ({ kind, moves, capacityKg, strokeM }) => [
    kind,
    `lifts the ${moves}`,
    mass(capacityKg),
    `stroke ${length(strokeM)}`,
  ],
  drive: ({ powerW, maxTorqueNm, minSpeedPerS, maxSpeedPerS }) => [
    power(powerW),
    torque(maxTorqueNm),
    between(minSpeedPerS, maxSpeedPerS, speed),
  ],
  circulator: ({ heatingPowerW, minTemperatureK, maxTemperatureK, pumpPressurePaGauge }) => [
    `heats ${power(heatingPowerW)}`,
    between(minTemperatureK, maxTemperatureK, temperature),
    `pump ${pressure(pumpPressurePaGauge)}`,
  ],
  fluid: ({ fluid, minTemperatureK, maxTemperatureK, densityKgPerM3 }) => [
    fluid,
    between(minTemperatureK, maxTemperatureK, temperature),
    density(densityKgPerM3),
  ],
  gasSupply: ({ kind, maxOutletPressurePaGauge, recordsUptake, gases }) => [
    kind,
    `up to ${pressure(maxOutletPressurePaGauge)}`,
    gases.join(', '),
    ...when(recordsUptake, 'records the uptake'),
  ],
  control: ({ channels, loops, recipes, recordsUptake }) => [
    `${String(channels)} channels`,
    loops === 1 ? 'one vessel set' : `${String(loops)} vessel sets`,
    ...when(recipes, 'recipes'),
    ...when(recordsUptake, 'records the uptake'),
  ],
  certificates: ({ contains }) => contains,
  qualification: ({ contains }) => contains,
};

/** The main values of a part, each with its unit. */
export const mainValuesOf = (item: Item): readonly string[] => valuesOf[item.slot](item as never);

/** Pressure and temperatures that a part stands; empty where it stands in none. */
export const ratingOf = ({ rating }: Item): readonly string[] =>
  rating === undefined
    ? []
    : [
        pressure(rating.maxPressurePaGauge),
        between(rating.minTemperatureK, rating.maxTemperatureK, temperature),
        ...when(rating.vacuum, 'vacuum'),
      ];

export const massOf = ({ massKg }: Item): string => (massKg === 0 ? '' : mass(massKg));
