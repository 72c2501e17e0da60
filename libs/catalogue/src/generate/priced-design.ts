/** What a part is made like, with its list price in euro. */
export interface PricedDesign<D> {
  readonly design: D;
  readonly priceEur: number;
}
