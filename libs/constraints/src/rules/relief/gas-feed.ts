import { compressibilityFactor, findFluid } from '@flangewise/engineering';
import { gaugeToAbsolute } from '@flangewise/quantities';
import type { Conditions } from '../../conditions.js';
import { reckon } from '../../figure.js';
import { gasesByImportance } from '../../gases-by-importance.js';

/** Ambient gas feeds the vessel [K]. */
const feedTemperatureK = 293.15;
/** Pressure drop ratio factor of a small globe regulator (IEC 60534-2-1 table, common value). */
const pressureDropRatioFactor = 0.72;
/** Of diatomic gases. It hardly matters: what it adds to the inflow it adds to the outflow. */
export const isentropicExponent = 1.4;

export const gasFeedConditions = ['gases', 'media', 'regulatorKv', 'supplyPressurePaGauge'] as const;

export type GasFeed =
  | { readonly kind: 'no gas' }
  | { readonly kind: 'missing'; readonly fields: readonly string[] }
  | { readonly kind: 'feed'; readonly gas: string; readonly supply: GasFeedInputs };

/** The supply as the relief calculations take it. */
export interface GasFeedInputs {
  readonly supplyPressurePaAbs: number;
  readonly flowCoefficientKv: number;
  readonly pressureDropRatioFactor: number;
  readonly gasTemperatureK: number;
  readonly gasMolarMassKgPerMol: number;
  readonly gasIsentropicExponent: number;
  readonly gasCompressibilityFactor: number;
}

/** The larger of what the client's regulator and the chosen one pass, as far as either is known. */
const largestKv = (client: number | undefined, chosen: number | null | undefined): number | undefined => {
  const said = [client, chosen].filter((kv) => kv !== undefined && kv !== null);
  return said.length === 0 ? undefined : Math.max(...said);
};

/** What comes in of the process gas when the regulator fails open. */
export const gasFeedOf = (
  gasSupply: { readonly flowCoefficientKv: number | null } | null,
  conditions: Pick<Conditions, (typeof gasFeedConditions)[number]>,
): GasFeed => {
  const { regulatorKv, supplyPressurePaGauge } = conditions;
  const [gas] = gasesByImportance(conditions);
  if (gas === undefined) return { kind: 'no gas' };
  const flowCoefficientKv = largestKv(regulatorKv, gasSupply?.flowCoefficientKv);
  if (flowCoefficientKv === undefined) return { kind: 'missing', fields: ['process.regulatorKv'] };
  if (supplyPressurePaGauge === undefined) return { kind: 'missing', fields: ['process.supplyPressure'] };
  const fluid = findFluid(gas);
  if (!fluid.ok) return { kind: 'missing', fields: [`molar mass of ${gas}`] };
  const supplyPressurePaAbs = gaugeToAbsolute(supplyPressurePaGauge);
  const z = reckon(compressibilityFactor, {
    gas,
    pressurePaAbs: supplyPressurePaAbs,
    temperatureK: feedTemperatureK,
  });
  return {
    kind: 'feed',
    gas,
    supply: {
      supplyPressurePaAbs,
      flowCoefficientKv,
      pressureDropRatioFactor,
      gasTemperatureK: feedTemperatureK,
      gasMolarMassKgPerMol: fluid.value.molarMassKgPerMol,
      gasIsentropicExponent: isentropicExponent,
      gasCompressibilityFactor: z.ok ? z.value.compressibilityFactor : 1,
    },
  };
};

/** Highest pressure in the vessel while the disc relieves [Pa absolute]. */
export const relievingPressurePaAbs = (relief: {
  readonly burstPressurePaGauge: number;
  readonly tolerance: number;
}): number => gaugeToAbsolute(relief.burstPressurePaGauge * (1 + relief.tolerance));
