import { type CalculationError, type Outcome, succeed } from '@flangewise/model';
import { missingInput } from '../missing-input.js';
import type { ImpellerConstants } from './impeller-constants.js';

export interface StirredLiquid {
  readonly viscosityPaS?: number | undefined;
  readonly consistencyPaSn?: number | undefined;
  readonly flowIndex?: number | undefined;
}

/** Viscosity over speed [Pa·s over 1/s], the central one and the one that gives the higher torque. */
export interface ViscosityAtImpeller {
  readonly central: (speedPerS: number) => number;
  readonly high: (speedPerS: number) => number;
  readonly newtonian: boolean;
}

/**
 * Viscosity that the impeller sees: given, or by Metzner and Otto from a power law.
 * @error CALC_INVALID_INPUT where neither a viscosity nor a power law is given
 */
export const viscosityAtImpeller = (
  { viscosityPaS, consistencyPaSn, flowIndex }: StirredLiquid,
  { metznerOtto }: ImpellerConstants,
): Outcome<ViscosityAtImpeller, CalculationError> => {
  if (consistencyPaSn !== undefined && flowIndex !== undefined) {
    const at =
      (shear: number) =>
      (speedPerS: number): number =>
        consistencyPaSn * (shear * speedPerS) ** (flowIndex - 1);
    return succeed({
      central: at(metznerOtto.value),
      high: at(flowIndex < 1 ? metznerOtto.low : metznerOtto.high),
      newtonian: false,
    });
  }
  if (viscosityPaS !== undefined) {
    const constant = (): number => viscosityPaS;
    return succeed({ central: constant, high: constant, newtonian: true });
  }
  return missingInput('viscosityPaS', 'give it, or consistencyPaSn and flowIndex of a power law');
};
