export interface SpecialRate {
  readonly material: string;
  /** [EUR/kg] of the blank. */
  readonly pricePerKg: number;
  /** [EUR/kg] of the finished vessel. */
  readonly machiningPerKg: number;
}

export interface SpecialRates {
  readonly materials: readonly SpecialRate[];
  /** Design, drawings and review of one special vessel [EUR]. */
  readonly engineering: number;
}
