/** One place in a constraint: a variable, and the class that each of its values falls into. */
export interface ClassMap {
  readonly variable: number;
  /** Class of each value, numbered in order of first appearance. */
  readonly classOf: Uint16Array;
  readonly count: number;
}

/**
 * Numbers the classes of a variable's values in order of first appearance, so that equal partitions look equal.
 * `origin[c]` is the key that became class c; keys that no value has disappear.
 */
export function classMap<K>(variable: number, keys: ArrayLike<K>): { map: ClassMap; origin: K[] } {
  const numberOf = new Map<K, number>();
  const origin: K[] = [];
  const classOf = new Uint16Array(keys.length);
  for (let value = 0; value < keys.length; value++) {
    const key = keys[value] as K;
    let number = numberOf.get(key);
    if (number === undefined) {
      number = origin.length;
      numberOf.set(key, number);
      origin.push(key);
    }
    classOf[value] = number;
  }
  return { map: { variable, classOf, count: origin.length }, origin };
}
