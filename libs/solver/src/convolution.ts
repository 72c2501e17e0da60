/** How often each load occurs; loads are whole numbers from 0. */
export type Loads = Map<number, bigint>;

/** Where in a load one of several places stands: `Math.floor(load / stride) % range`. */
export interface Digit {
  readonly stride: number;
  readonly range: number;
}

/** Pairs of loads beyond which whole polynomials are multiplied. */
const MANY_PAIRS = 20_000;
/** Slots beyond which their numbers become unwieldy. */
const MOST_SLOTS = 200_000;

const sumOf = (loads: Loads): bigint => {
  let sum = 0n;
  for (const times of loads.values()) sum += times;
  return sum;
};

/** Splits loads by everything but one digit; each part as the coefficients of a polynomial in that digit. */
function coefficients(loads: Loads, { stride, range }: Digit): Map<number, (bigint | undefined)[]> {
  const parts = new Map<number, (bigint | undefined)[]>();
  for (const [load, times] of loads) {
    const digit = Math.floor(load / stride) % range;
    const rest = load - digit * stride;
    const list = parts.get(rest) ?? [];
    list[digit] = times;
    parts.set(rest, list);
  }
  return parts;
}

/** A polynomial as one number, each coefficient in a slot of `width` hexadecimal digits. */
function pack(list: readonly (bigint | undefined)[], width: number): bigint {
  let text = '0x0';
  for (let i = list.length - 1; i >= 0; i--) text += (list[i] ?? 0n).toString(16).padStart(width, '0');
  return BigInt(text);
}

function addPairs(a: Loads, b: Loads): Loads {
  const sum: Loads = new Map();
  for (const [loadA, timesA] of a)
    for (const [loadB, timesB] of b) {
      const load = loadA + loadB;
      sum.set(load, (sum.get(load) ?? 0n) + timesA * timesB);
    }
  return sum;
}

/** Multiplies polynomials as whole numbers: the slots are wide enough that coefficients do not run over (Kronecker). */
function addPolynomials(a: Loads, b: Loads, digit: Digit): Loads {
  const width = Math.ceil((sumOf(a) * sumOf(b)).toString(16).length) + 1;
  const packed = (loads: Loads): [number, bigint][] =>
    [...coefficients(loads, digit)].map(([rest, list]) => [rest, pack(list, width)]);
  const products = new Map<number, bigint>();
  const ofB = packed(b);
  for (const [restA, polynomialA] of packed(a))
    for (const [restB, polynomialB] of ofB)
      products.set(restA + restB, (products.get(restA + restB) ?? 0n) + polynomialA * polynomialB);
  const sum: Loads = new Map();
  for (const [rest, product] of products) {
    const text = product.toString(16);
    for (let slot = 0, end = text.length; end > 0; slot++, end -= width) {
      const times = BigInt(`0x${text.slice(Math.max(0, end - width), end)}`);
      if (times > 0n) sum.set(rest + slot * digit.stride, times);
    }
  }
  return sum;
}

/**
 * How often each sum of a load of a and a load of b occurs.
 * @param digit the digit along which long lists are multiplied as polynomials
 */
export function addLoads(a: Loads, b: Loads, digit: Digit | null): Loads {
  const isLong = a.size * b.size > MANY_PAIRS && digit !== null && digit.range <= MOST_SLOTS;
  return isLong ? addPolynomials(a, b, digit) : addPairs(a, b);
}
