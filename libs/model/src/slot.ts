import { z } from 'zod';

/** Where a slot stands: once on the frame, shared by all vessel sets, or once in every set. */
export type SlotPlace = 'frame' | 'set';

export interface SlotDefinition {
  readonly place: SlotPlace;
  readonly title: string;
  /** Whether a system may go without. */
  readonly optional: boolean;
  readonly group:
    'vessel' | 'closure' | 'stirring' | 'temperature' | 'relief' | 'accessories' | 'supply' | 'papers';
  readonly description: string;
}

interface SlotText {
  readonly title: string;
  readonly description: string;
  readonly optional?: true;
}

const define = <const P extends SlotPlace, const T extends SlotText>(
  place: P,
  group: SlotDefinition['group'],
  text: T,
) => ({
  place,
  group,
  title: text.title,
  description: text.description,
  optional: (text.optional ?? false) as T extends { readonly optional: true } ? true : false,
});

/** Every choice that makes a system, in the order in which an engineer makes them. */
export const slots = {
  vessel: define('set', 'vessel', {
    title: 'Vessel',
    description: 'Family, size, bottom form, wall, jacket',
  }),
  material: define('set', 'vessel', { title: 'Wetted material', description: 'What the product touches' }),
  closure: define('set', 'closure', { title: 'Closure', description: 'Bolts, clamp or segments' }),
  seal: define('set', 'closure', { title: 'Seal', description: 'O-ring, flat gasket or metal ring' }),
  cover: define('set', 'closure', { title: 'Cover', description: 'Port pattern and shaft bushing' }),
  stirrer: define('set', 'stirring', { title: 'Stirrer', description: 'Impeller on the shaft' }),
  shaft: define('set', 'stirring', { title: 'Shaft', description: 'Length, diameter, bearing' }),
  baffles: define('set', 'stirring', { title: 'Baffles', description: 'Stop the swirl', optional: true }),
  coupling: define('set', 'stirring', { title: 'Coupling', description: 'Carries torque through the cover' }),
  heater: define('set', 'temperature', {
    title: 'Heating',
    description: 'Electric mantle around the vessel',
    optional: true,
  }),
  coil: define('set', 'temperature', {
    title: 'Cooling',
    description: 'Coil inside the vessel',
    optional: true,
  }),
  temperatureProbe: define('set', 'temperature', {
    title: 'Thermowell',
    description: 'Measures the batch temperature',
  }),
  limiter: define('set', 'relief', {
    title: 'Temperature limiter',
    description: 'Cuts the heat, independent of the controller',
    optional: true,
  }),
  relief: define('set', 'relief', { title: 'Relief', description: 'Bursting disc with holder' }),
  ventLine: define('set', 'relief', {
    title: 'Vent line',
    description: 'From the disc to a safe place',
    optional: true,
  }),
  pressureGauge: define('set', 'relief', { title: 'Pressure gauge', description: 'Range of this set' }),
  gasLimit: define('set', 'relief', {
    title: 'Gas limit',
    description: 'Keeps the gas supply below PS of this set',
    optional: true,
  }),
  gasInlet: define('set', 'accessories', {
    title: 'Gas inlet',
    description: 'Tube or port for gas',
    optional: true,
  }),
  sampling: define('set', 'accessories', {
    title: 'Sampling',
    description: 'Dip tube and sampling device',
    optional: true,
  }),
  bottomValve: define('set', 'accessories', {
    title: 'Bottom valve',
    description: 'Empties the vessel',
    optional: true,
  }),
  sightGlass: define('set', 'accessories', {
    title: 'Sight glass',
    description: 'With lamp',
    optional: true,
  }),
  charging: define('set', 'accessories', {
    title: 'Charging',
    description: 'Funnel or burette',
    optional: true,
  }),
  condenser: define('set', 'accessories', {
    title: 'Condenser',
    description: 'Returns the vapour',
    optional: true,
  }),
  portPiece: define('set', 'accessories', {
    title: 'Multi-port piece',
    description: 'Several parts on one port of the cover',
    optional: true,
  }),
  basket: define('set', 'accessories', {
    title: 'Catalyst basket',
    description: 'Holds pellets',
    optional: true,
  }),
  processProbe: define('set', 'accessories', {
    title: 'Process probe',
    description: 'pH, turbidity and others',
    optional: true,
  }),
  shield: define('set', 'vessel', {
    title: 'Shield',
    description: 'Between a glass vessel and people',
    optional: true,
  }),
  frame: define('frame', 'supply', { title: 'Frame', description: 'Carries vessel sets and drive' }),
  lift: define('frame', 'supply', {
    title: 'Lift',
    description: 'Raises cover or lowers vessel',
    optional: true,
  }),
  drive: define('frame', 'stirring', { title: 'Drive', description: 'Motor and its protection' }),
  circulator: define('frame', 'temperature', {
    title: 'Circulator',
    description: 'Heats and cools the jacket fluid',
    optional: true,
  }),
  fluid: define('frame', 'temperature', {
    title: 'Jacket fluid',
    description: 'Carries heat to jackets',
    optional: true,
  }),
  gasSupply: define('frame', 'supply', {
    title: 'Gas supply',
    description: 'Regulator, flow controller or dosing reservoir',
    optional: true,
  }),
  control: define('frame', 'supply', { title: 'Control', description: 'Controller, recording, recipes' }),
  certificates: define('frame', 'papers', {
    title: 'Certificates',
    description: 'Material and test papers',
    optional: true,
  }),
  qualification: define('frame', 'papers', {
    title: 'Qualification',
    description: 'Acceptance test and papers',
    optional: true,
  }),
} as const satisfies Record<string, SlotDefinition>;

export type SlotName = keyof typeof slots;
/** Slots of which a system may have none. */
export type OptionalSlot = {
  [K in SlotName]: (typeof slots)[K]['optional'] extends true ? K : never;
}[SlotName];
export const slotNames = Object.keys(slots) as SlotName[];
export const slotNameSchema = z.enum(slotNames as [SlotName, ...SlotName[]]);

export const setSlots = slotNames.filter((name) => slots[name].place === 'set');
export const frameSlots = slotNames.filter((name) => slots[name].place === 'frame');

/** Where one choice stands in a system: `frame.drive` or `sets[0].stirrer`. */
export type SlotPath = `frame.${string}` | `sets[${number}].${string}`;

export const slotPath = (slot: SlotName, set = 0): SlotPath =>
  slots[slot].place === 'frame' ? `frame.${slot}` : `sets[${set}].${slot}`;

/** The slot and set that a path names; undefined when it names none. */
export const parseSlotPath = (
  path: string,
): { readonly slot: SlotName; readonly set?: number } | undefined => {
  const match = /^(?:frame|sets\[(\d+)\])\.(\w+)$/.exec(path);
  const slot = slotNameSchema.safeParse(match?.[2]);
  if (match === null || !slot.success) return undefined;
  const inSet = match[1] !== undefined;
  if (inSet !== (slots[slot.data].place === 'set')) return undefined;
  return inSet ? { slot: slot.data, set: Number(match[1]) } : { slot: slot.data };
};
