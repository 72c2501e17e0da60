import { fail, type Outcome, succeed } from '@flangewise/model';
import { type AqueousSolution, findAqueousSolution } from './aqueous-solution-data.js';
import { type Fluid, findFluid } from './fluid-data.js';
import { massFractionField, soluteField, substanceField } from './fluid-fields.js';

/** A pure fluid, or one solute in water. */
export type Liquid =
  | { readonly kind: 'pure'; readonly name: string; readonly fluid: Fluid }
  | {
      readonly kind: 'solution';
      readonly name: string;
      readonly solution: AqueousSolution;
      readonly massFraction: number;
    };

/** How a calculation takes a liquid in: a substance, or a solute in water with its mass fraction. */
export const liquidFields = {
  substance: substanceField.optional(),
  solute: soluteField.optional(),
  massFraction: massFractionField.optional(),
} as const;

export interface LiquidInputs {
  readonly substance?: string | undefined;
  readonly solute?: string | undefined;
  readonly massFraction?: number | undefined;
}

const invalid = (field: string, message: string): Outcome<never> =>
  fail({ code: 'CALC_INVALID_INPUT', message: `${field}: ${message}`, field });

const solutionOf = (solute: string, massFraction: number | undefined): Outcome<Liquid> => {
  if (massFraction === undefined) {
    return invalid('massFraction', `none given; the mass fraction of ${solute} in water is needed (0 to 1)`);
  }
  const solution = findAqueousSolution(solute);
  return solution.ok
    ? succeed({
        kind: 'solution',
        name: `${solution.value.name} ${String(Number((100 * massFraction).toFixed(2)))} % in water`,
        solution: solution.value,
        massFraction,
      })
    : solution;
};

/**
 * The liquid that is meant. A substance with a mass fraction below 1 is a solution in water.
 * @error CALC_INVALID_INPUT where none or both are given, CALC_UNKNOWN_SUBSTANCE
 */
export const findLiquid = ({ substance, solute, massFraction }: LiquidInputs): Outcome<Liquid> => {
  if (substance !== undefined && solute !== undefined) {
    return invalid('substance', 'substance and solute given; give one of them');
  }
  if (solute !== undefined) return solutionOf(solute, massFraction);
  if (substance === undefined) {
    return invalid(
      'substance',
      'none given; give a substance, or solute and massFraction for a solution in water',
    );
  }
  if (massFraction !== undefined && massFraction < 1) return solutionOf(substance, massFraction);
  const fluid = findFluid(substance);
  if (fluid.ok) return succeed({ kind: 'pure', name: fluid.value.name, fluid: fluid.value });
  const inWater = findAqueousSolution(substance);
  return inWater.ok
    ? invalid(
        'massFraction',
        `none given; ${inWater.value.name} is known here in water only: give its mass fraction (0 to ${String(inWater.value.density.maxMassFraction)})`,
      )
    : fluid;
};
