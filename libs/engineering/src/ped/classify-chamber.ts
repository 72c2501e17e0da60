import { type Basis, type Outcome, succeed } from '@flangewise/model';
import { findFluid } from '../fluid/fluid-data.js';
import { vapourPressure } from '../fluid/vapour-pressure.js';
import { weakestBasis } from '../materials/basis.js';
import { shown } from '../shown.js';
import { classifyVessel, type VesselClass } from './annex-ii-vessels.js';
import { fluidGroupOf } from './fluid-group.js';
import { type FluidState, fluidStateOf } from './fluid-state.js';
import { findSubstanceHazards, type SubstanceHazards } from './substance-hazards.js';

/** A fluid in a chamber. Without a vapour pressure the tables of the fluids are asked. */
export interface ChamberFluid {
  readonly substance: string;
  /** At TS, absolute [Pa]. */
  readonly vapourPressurePaAbs?: number | undefined;
}

export interface Chamber {
  readonly volumeL: number;
  readonly maxPressureBarGauge: number;
  readonly maxTemperatureK: number;
  readonly fluids: readonly ChamberFluid[];
}

interface FluidFinding {
  readonly fluidGroup: 1 | 2;
  readonly groupReason: string;
  readonly state: FluidState;
  readonly stateReason: string;
  readonly basis: Basis;
}

type StateFinding = Pick<FluidFinding, 'state' | 'stateReason'>;

const byPressure = (substance: string, pressurePaAbs: number): StateFinding => {
  const state = fluidStateOf(pressurePaAbs);
  return {
    state,
    stateReason: `${substance}: vapour pressure at TS ${shown(pressurePaAbs / 1e5)} bar absolute, ${state === 'gas' ? 'above' : 'not above'} 1.513 bar`,
  };
};

/** From the tables of the fluids: vapour pressure, and below the reach of its row the normal boiling point. */
const byTables = (substance: string, temperatureK: number): StateFinding => {
  const pressure = vapourPressure.compute({ substance, temperatureK });
  if (pressure.ok) return byPressure(substance, pressure.value.pressurePaAbs);
  const fluid = findFluid(substance);
  const boilingK = fluid.ok ? fluid.value.normalBoilingPointK : undefined;
  if (boilingK !== undefined && temperatureK <= boilingK) {
    return {
      state: 'liquid',
      stateReason: `${substance}: TS not above the boiling point of ${shown(boilingK)} K`,
    };
  }
  return {
    state: 'gas',
    stateReason: `${substance}: no vapour pressure at TS is known, taken as gas; give vapourPressurePaAbs`,
  };
};

const stateOf = (
  { substance, vapourPressurePaAbs }: ChamberFluid,
  maxTemperatureK: number,
  { state, lessVolatileThan }: SubstanceHazards,
): StateFinding => {
  if (state === 'gas') return { state, stateReason: `${substance}: a gas at 20 °C` };
  if (vapourPressurePaAbs !== undefined) return byPressure(substance, vapourPressurePaAbs);
  if (lessVolatileThan === undefined) return byTables(substance, maxTemperatureK);
  const bound = byTables(lessVolatileThan, maxTemperatureK);
  return { ...bound, stateReason: `${substance}, less volatile than ${bound.stateReason}` };
};

const findingOf = (fluid: ChamberFluid, maxTemperatureK: number): Outcome<FluidFinding> => {
  const group = fluidGroupOf(fluid.substance, maxTemperatureK);
  if (!group.ok) return group;
  const hazards = findSubstanceHazards(fluid.substance);
  if (!hazards.ok) return hazards;
  return succeed({
    fluidGroup: group.value.fluidGroup,
    groupReason: group.value.reason,
    basis: group.value.basis,
    ...stateOf(fluid, maxTemperatureK, hazards.value),
  });
};

export interface ChamberClass extends VesselClass {
  readonly fluidGroup: 1 | 2;
  readonly groupReason: string;
  readonly fluidState: FluidState;
  readonly stateReason: string;
  readonly basis: Basis;
}

/**
 * Category of a chamber by all fluids that it can hold. The strictest group holds for all: the gas above a liquid of
 * group 1 carries its vapour. One gas makes the chamber a gas chamber, with its whole volume.
 *
 * @error CALC_UNKNOWN_SUBSTANCE
 */
export const classifyChamber = ({
  fluids,
  maxTemperatureK,
  volumeL,
  maxPressureBarGauge,
}: Chamber): Outcome<ChamberClass> => {
  const findings: FluidFinding[] = [];
  for (const fluid of fluids) {
    const finding = findingOf(fluid, maxTemperatureK);
    if (!finding.ok) return finding;
    findings.push(finding.value);
  }
  const strictest = findings.find(({ fluidGroup }) => fluidGroup === 1);
  const gas = findings.find(({ state }) => state === 'gas');
  const fluidGroup = strictest === undefined ? 2 : 1;
  const fluidState = gas === undefined ? 'liquid' : 'gas';
  return succeed({
    ...classifyVessel({ volumeL, maxPressureBarGauge, fluidState, fluidGroup }),
    fluidGroup,
    groupReason: strictest?.groupReason ?? findings.map(({ groupReason }) => groupReason).join('; '),
    fluidState,
    stateReason: gas?.stateReason ?? findings.map(({ stateReason }) => stateReason).join('; '),
    basis: weakestBasis(findings.map(({ basis }) => basis)),
  });
};
