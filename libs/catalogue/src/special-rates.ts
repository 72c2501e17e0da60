import rates from './data/special-rates.json' with { type: 'json' };

export interface SpecialRate {
  readonly material: string;
  /** [EUR/kg] of the blank. */
  readonly pricePerKg: number;
  /** [EUR/kg] of the finished vessel. */
  readonly machiningPerKg: number;
}

/** Materials of which special vessels are made, and what they cost. */
export const specialRates: readonly SpecialRate[] = rates.materials;

/** Design, drawings and review of one special vessel [EUR]. */
export const specialEngineering: number = rates.engineering;

/** Working days until a special vessel can be shipped. */
export const specialLeadTimeDays: number = rates.leadTimeDays;
