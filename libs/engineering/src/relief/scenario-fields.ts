import { z } from 'zod';
import { quantity } from '../calculation.js';
import {
  compressibilityFactor,
  drainage,
  environmentFactor,
  isentropicExponent,
  molarMassKgPerMol,
  wettedAreaM2,
} from './relief-fields.js';

/** Inputs of the boiling and expansion scenarios; all may be absent. */
export const scenarioFields = {
  wettedAreaM2: wettedAreaM2.optional(),
  drainage: drainage.optional(),
  environmentFactor: environmentFactor.optional(),
  heatOfVaporisationJPerKg: quantity(
    { unit: 'J/kg', symbol: 'h_v', description: 'Heat of vaporisation at the relieving pressure' },
    z.number().min(1e4).max(3e6),
  ).optional(),
  vapourMolarMassKgPerMol: molarMassKgPerMol.optional(),
  vapourIsentropicExponent: isentropicExponent.optional(),
  vapourCompressibilityFactor: compressibilityFactor.optional(),
  heaterPowerW: quantity(
    { unit: 'W', symbol: 'P', description: 'Full power of the heater, or heating power of the circulator' },
    z.number().min(0),
  ).optional(),
  heatInputW: quantity(
    { unit: 'W', symbol: 'Q', description: 'Heat input to the blocked-in liquid' },
    z.number().min(0),
  ).optional(),
  liquidExpansionPerK: quantity(
    { unit: '1/K', symbol: 'β', description: 'Cubic expansion of the liquid' },
    z.number().min(0).max(0.05),
  ).optional(),
  liquidHeatCapacityJPerKgK: quantity(
    { unit: 'J/(kg.K)', symbol: 'c_p', description: 'Heat capacity of the liquid' },
    z.number().min(100).max(20_000),
  ).optional(),
  liquidDensityKgPerM3: quantity(
    { unit: 'kg/m3', symbol: 'ρ', description: 'Density of the liquid' },
    z.number().min(50).max(25_000),
  ).optional(),
};

export interface Relieving {
  readonly relievingPressurePaAbs: number;
  readonly backPressurePaAbs?: number | undefined;
  readonly dischargeCoefficient?: number | undefined;
  readonly relievingTemperatureK?: number | undefined;
}

export type ScenarioInputs = z.output<z.ZodObject<typeof scenarioFields>> & Relieving;

export interface Missing {
  readonly missing: string[];
}

export const absent = (fields: Readonly<Record<string, unknown>>): Missing => ({
  missing: Object.keys(fields).filter((field) => fields[field] === undefined),
});
