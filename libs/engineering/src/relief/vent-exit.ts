import { molarGasConstant } from '../molar-gas-constant.js';

export interface VentStream {
  readonly massFlowKgPerS: number;
  readonly lineDiameterM: number;
  readonly temperatureK: number;
  readonly molarMassKgPerMol: number;
  readonly compressibilityFactor: number;
  readonly isentropicExponent: number;
  readonly ambientPressurePaAbs: number;
}

export interface VentExit {
  readonly areaM2: number;
  readonly mach: number;
  readonly pressurePaAbs: number;
  readonly velocityMPerS: number;
}

/**
 * State at the open end of a vent line, from mass flow and stagnation temperature.
 *
 *   q = W/A √(Z R T/(k M)) / p_a = M √(1 + h M²),  h = (k − 1)/2; choked (M = 1, p_e > p_a) where that exceeds 1
 */
export const ventExit = (stream: VentStream): VentExit => {
  const { isentropicExponent: k, temperatureK, ambientPressurePaAbs } = stream;
  const h = (k - 1) / 2;
  const areaM2 = (Math.PI / 4) * stream.lineDiameterM ** 2;
  const gas = (stream.compressibilityFactor * molarGasConstant * temperatureK) / stream.molarMassKgPerMol;
  const scaled = (stream.massFlowKgPerS / areaM2) * Math.sqrt(gas / k);
  const square = (scaled / ambientPressurePaAbs) ** 2;
  const mach = Math.min(1, Math.sqrt((2 * square) / (1 + Math.sqrt(1 + 4 * h * square))));
  const pressurePaAbs = mach < 1 ? ambientPressurePaAbs : scaled / Math.sqrt(1 + h);
  const velocityMPerS = mach * Math.sqrt((k * gas) / (1 + h * mach ** 2));
  return { areaM2, mach, pressurePaAbs, velocityMPerS };
};
