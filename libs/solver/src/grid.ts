import type { ClassMap } from './class-map.js';
import { classMap } from './class-map.js';

/** Integers over class tuples, row-major, with the place each dimension stands for. */
export interface Grid {
  readonly maps: readonly ClassMap[];
  readonly cells: Int32Array;
}

interface ClassedScope {
  readonly scope: readonly number[];
  readonly classOf?: readonly Uint16Array[];
  readonly classCount?: readonly number[];
}

/** What of an array lies before, at, and after one dimension. */
function spans(counts: readonly number[], dimension: number): { outer: number; inner: number } {
  const product = (list: readonly number[]): number => list.reduce((a, b) => a * b, 1);
  return { outer: product(counts.slice(0, dimension)), inner: product(counts.slice(dimension + 1)) };
}

/** Keeps, along one dimension, only the slices listed, in that order. */
function selectSlices(
  cells: Int32Array,
  shape: { counts: number[]; dimension: number },
  kept: number[],
): Int32Array {
  const { outer, inner } = spans(shape.counts, shape.dimension);
  const count = shape.counts[shape.dimension] as number;
  const result = new Int32Array(outer * kept.length * inner);
  let to = 0;
  for (let o = 0; o < outer; o++)
    for (const slice of kept) {
      const from = (o * count + slice) * inner;
      result.set(cells.subarray(from, from + inner), to);
      to += inner;
    }
  return result;
}

/** A hash for each slice along a dimension. */
function sliceHashes(cells: Int32Array, counts: number[], dimension: number): Int32Array {
  const { outer, inner } = spans(counts, dimension);
  const count = counts[dimension] as number;
  const hashes = new Int32Array(count).fill(0x811c9dc5);
  let at = 0;
  for (let o = 0; o < outer; o++)
    for (let c = 0; c < count; c++) {
      let hash = hashes[c] as number;
      for (let i = 0; i < inner; i++)
        hash = Math.imul(hash ^ (hash >>> 15) ^ (cells[at++] as number), 0x01000193);
      hashes[c] = hash;
    }
  return hashes;
}

/** For each slice along a dimension the first slice that is equal to it. */
function equalSlices(cells: Int32Array, counts: number[], dimension: number): Int32Array {
  const { outer, inner } = spans(counts, dimension);
  const count = counts[dimension] as number;
  const areEqual = (a: number, b: number): boolean => {
    for (let o = 0; o < outer; o++) {
      const [atA, atB] = [(o * count + a) * inner, (o * count + b) * inner];
      for (let i = 0; i < inner; i++) if (cells[atA + i] !== cells[atB + i]) return false;
    }
    return true;
  };
  const hashes = sliceHashes(cells, counts, dimension);
  const byHash = new Map<number, number[]>();
  return Int32Array.from({ length: count }, (_, c) => {
    const alike = byHash.get(hashes[c] as number) ?? [];
    const equal = alike.find((other) => areEqual(other, c));
    if (equal !== undefined) return equal;
    alike.push(c);
    byHash.set(hashes[c] as number, alike);
    return c;
  });
}

/** Reads a classed array into a grid: classes numbered by first appearance, unused classes dropped. */
export function readGrid(classed: ClassedScope, sizes: readonly number[], cells: Int32Array): Grid {
  const maps: ClassMap[] = [];
  const counts = classed.scope.map((v, i) => classed.classCount?.[i] ?? (sizes[v] as number));
  let result = cells;
  for (const [dimension, variable] of classed.scope.entries()) {
    const keys =
      classed.classOf?.[dimension] ?? Array.from({ length: sizes[variable] as number }, (_, i) => i);
    const { map, origin } = classMap(variable, keys);
    if (origin.length !== counts[dimension] || origin.some((key, i) => key !== i))
      result = selectSlices(result, { counts, dimension }, origin);
    counts[dimension] = origin.length;
    maps.push(map);
  }
  return { maps, cells: result };
}

/** Merges classes whose slices are equal and drops dimensions that make no difference. */
export function reduceGrid(grid: Grid): Grid {
  let cells = grid.cells;
  const maps = [...grid.maps];
  const counts = maps.map((m) => m.count);
  for (const [dimension, map] of grid.maps.entries()) {
    const first = equalSlices(cells, counts, dimension);
    const merged = classMap(
      map.variable,
      map.classOf.map((c) => first[c] as number),
    );
    if (merged.map.count === counts[dimension]) continue;
    cells = selectSlices(cells, { counts, dimension }, merged.origin);
    counts[dimension] = merged.map.count;
    maps[dimension] = merged.map;
  }
  return { maps: maps.filter((m) => m.count > 1), cells };
}
