import {
  coverWithPorts,
  specialCoverLeadTimeDays,
  specialMaterials,
  specialShaftLeadTimeDays,
} from '@flangewise/catalogue';
import { materialDensity } from '@flangewise/engineering';
import {
  type CalculationError,
  fail,
  type ItemOf,
  type Outcome,
  type SpecialPartWish,
  succeed,
} from '@flangewise/model';
import type { Range } from './range.js';
import { shownQuantity } from './shown-quantity.js';
import { specialPriceOf } from './special-price.js';
import type { MadeSpecial } from './special-vessel.js';

type Wish<K extends SpecialPartWish['kind']> = Extract<SpecialPartWish, { kind: K }>;

const numbers = { cover: 'SC', shaft: 'SS' } as const;
const itemNumber = ({ kind, set }: SpecialPartWish): string =>
  `${numbers[kind]}-${String(set + 1).padStart(4, '0')}`;

/** The item of the range that a special is made like. */
const likeOf = <K extends SpecialPartWish['kind']>(
  { kind, basedOn }: Wish<K>,
  range: Range,
): Outcome<ItemOf<K>, CalculationError> => {
  const like = range.items.get(basedOn);
  return like?.slot === kind
    ? succeed(like as ItemOf<K>)
    : fail({
        code: 'CALC_OUT_OF_RANGE',
        message: `basedOn: ${basedOn} given; a ${kind} of the range is allowed`,
        field: 'basedOn',
        given: basedOn,
      });
};

const madeOf = (material: string): Outcome<number, CalculationError> => {
  if (!specialMaterials.includes(material))
    return fail({
      code: 'CALC_MISSING_PROPERTY',
      message: `basedOn: it is of ${material}; specials are made of ${specialMaterials.join(', ')}`,
      field: 'basedOn',
      given: material,
    });
  const density = materialDensity(material);
  return density.ok ? succeed(density.value.value) : density;
};

const portsText = (ports: ItemOf<'cover'>['ports']): string =>
  ports.map(({ name, diameterM }) => `${name} ${shownQuantity(diameterM, 'm')}`).join(', ');

const makeCover = (wish: Wish<'cover'>, range: Range): Outcome<MadeSpecial, CalculationError> => {
  const like = likeOf(wish, range);
  if (!like.ok) return like;
  const density = madeOf(like.value.carrier ?? like.value.material);
  if (!density.ok) return density;
  const made = coverWithPorts(like.value, wish.ports);
  if (!made.ok) return made;
  const { cover, plateMassKg } = made.value;
  const item: ItemOf<'cover'> = {
    ...like.value,
    id: itemNumber(wish),
    name: `Special cover like ${like.value.id}, ${String(wish.ports.length)} ports, ${like.value.material}`,
    massKg: cover.massKg,
    thicknessM: cover.thicknessM,
    ports: wish.ports,
    leadTimeDays: specialCoverLeadTimeDays,
    special: true,
  };
  return succeed({
    item,
    ...specialPriceOf(
      like.value.material,
      { massKg: cover.massKg, blankMassKg: plateMassKg },
      range.specialRates,
    ),
    deviations: [
      `ports ${portsText(wish.ports)} instead of ${portsText(like.value.ports)}`,
      `thickness ${shownQuantity(cover.thicknessM, 'm', 'up')} instead of ${shownQuantity(like.value.thicknessM, 'm', 'up')}, mass ${shownQuantity(cover.massKg, 'kg', 'up')}`,
      'openings, sealing faces and drawings to be designed and released by an engineer',
    ],
  });
};

/** Bar that is bought over the shaft that stays. */
const barFactor = 1.6;

const makeShaft = (wish: Wish<'shaft'>, range: Range): Outcome<MadeSpecial, CalculationError> => {
  const like = likeOf(wish, range);
  if (!like.ok) return like;
  const { material, lengthM, diameterM, bearingSpanM, massKg } = like.value;
  const density = madeOf(material);
  if (!density.ok) return density;
  const added = density.value * (Math.PI / 4) * diameterM ** 2 * (wish.lengthM - lengthM);
  const mass = Number((massKg + added).toPrecision(3));
  if (wish.lengthM + bearingSpanM <= 0 || mass <= 0 || wish.lengthM === lengthM)
    return fail({
      code: 'CALC_OUT_OF_RANGE',
      message: `lengthM: ${String(wish.lengthM)} m given; another length than the ${String(lengthM)} m of ${like.value.id} is allowed`,
      field: 'lengthM',
      given: wish.lengthM,
    });
  return succeed({
    item: {
      ...like.value,
      id: itemNumber(wish),
      name: `Special shaft like ${like.value.id}, ${shownQuantity(wish.lengthM, 'm')} free, ${material}`,
      massKg: mass,
      lengthM: wish.lengthM,
      leadTimeDays: specialShaftLeadTimeDays,
      special: true,
    },
    ...specialPriceOf(material, { massKg: mass, blankMassKg: mass * barFactor }, range.specialRates),
    deviations: [
      `free length ${shownQuantity(wish.lengthM, 'm')} instead of ${shownQuantity(lengthM, 'm')}, mass ${shownQuantity(mass, 'kg', 'up')}`,
      'bearing, balancing and drawings to be designed and released by an engineer',
    ],
  });
};

/**
 * A cover with other ports or a shaft of another length, made like one of the range: thickness, mass, price by the
 * maker's rates, lead time. To be reviewed and released by an engineer.
 *
 * @error CALC_OUT_OF_RANGE for an item that is none of the kind, ports that do not fit, a length that is the usual one;
 *   CALC_MISSING_PROPERTY for a material of which no specials are made
 */
export const makeSpecialPart = (
  wish: SpecialPartWish,
  range: Range,
): Outcome<MadeSpecial, CalculationError> =>
  wish.kind === 'cover' ? makeCover(wish, range) : makeShaft(wish, range);
