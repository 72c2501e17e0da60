/** A candidate as a point: the lower the price and the further right, the better. */
export interface Point {
  readonly price: number;
  readonly good: number;
}

/** Points that no other beats in both: as cheap or cheaper and at least as good. The cheapest first. */
export const frontOf = <P extends Point>(points: readonly P[]): readonly P[] => {
  const front: P[] = [];
  for (const point of points.toSorted((a, b) => a.price - b.price || b.good - a.good)) {
    const best = front.at(-1);
    if (best === undefined || point.good > best.good) front.push(point);
  }
  return front;
};
