import type { CalculationError, Outcome, SourceReference } from '@flangewise/model';
import { succeed } from '@flangewise/model';
import type { StepLog } from '../calculation.js';
import { type FormulaStep, formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import {
  impellerConstantsOf,
  type ImpellerConstants,
  type ImpellerType,
  type SourcedConstant,
} from './impeller-constants.js';
import { bladedPowerCurve } from './kamei-hiraoka.js';
import { ribbonLaminarConstantOf, ribbonStep } from './ribbon-laminar-constant.js';

/** Geometry of an impeller in its vessel; what is not given is the usual proportion of its type. */
export interface ImpellerInVessel {
  readonly impeller: ImpellerType;
  readonly impellerDiameterM: number;
  readonly vesselDiameterM: number;
  readonly liquidHeightM?: number | undefined;
  readonly bladeCount?: number | undefined;
  readonly bladeWidthOverDiameter?: number | undefined;
  readonly bladeAngleDeg?: number | undefined;
  readonly impellerHeightM?: number | undefined;
  readonly pitchM?: number | undefined;
  readonly baffleCount?: number | undefined;
  readonly baffleWidthOverVessel?: number | undefined;
}

export interface PowerCurve {
  readonly constants: ImpellerConstants;
  /** Central power number at a Reynolds number. */
  readonly at: (reynolds: number) => number;
  /** Factors of the central value. */
  readonly low: number;
  readonly high: number;
  /** Limit of Np · Re as Re tends to 0. */
  readonly laminarConstant: number;
  /** How the central power number comes about at a Reynolds number. */
  readonly explain: (reynolds: number, log: StepLog) => void;
}

const diameterRatios: Record<ImpellerConstants['curve'], readonly [number, number]> = {
  blades: [0.1, 0.9],
  constants: [0.1, 0.9],
  anchor: [0.7, 0.995],
  ribbon: [0.7, 0.995],
};

/** Baffles of a tenth of the vessel diameter where nothing is said: the careful side for torque and power. */
const usualBaffles = 4;

/** Without baffles axial impellers and turbines draw less; how much less is not known for these types. */
const unbaffledLow = 0.4;

type Shape = Pick<PowerCurve, 'at' | 'laminarConstant' | 'explain'>;

/** Np = K_L/Re + Np_t, with the step that leads to K_L where there is one. */
const twoConstants = (
  laminarConstant: number,
  { turbulentPowerNumber }: { readonly turbulentPowerNumber: SourcedConstant },
  laminarStep?: FormulaStep,
): Shape => {
  const at = (re: number): number => laminarConstant / re + turbulentPowerNumber.value;
  return {
    at,
    laminarConstant,
    explain: (Re, log) => {
      if (laminarStep !== undefined) log(formulaStep(laminarStep));
      log(
        formulaStep({
          symbol: 'Np',
          formula: 'K_L / Re + Np_t',
          where: { K_L: laminarConstant, Re, Np_t: turbulentPowerNumber.value },
          value: at(Re),
          unit: '1',
          note: `Np_t: ${turbulentPowerNumber.source} (${turbulentPowerNumber.basis})`,
        }),
      );
    },
  };
};

const shapeOf = (geometry: ImpellerInVessel, constants: ImpellerConstants): Shape => {
  const { impellerDiameterM: d, vesselDiameterM: t } = geometry;
  switch (constants.curve) {
    case 'blades': {
      const blades = bladedPowerCurve({
        bladeCount: geometry.bladeCount ?? constants.blades.count,
        bladeWidthOverDiameter: geometry.bladeWidthOverDiameter ?? constants.blades.widthOverDiameter,
        bladeAngleDeg: geometry.bladeAngleDeg ?? constants.blades.angleDeg,
        impellerOverVessel: d / t,
        liquidHeightOverVessel: (geometry.liquidHeightM ?? t) / t,
        baffleCount: geometry.baffleCount ?? usualBaffles,
        baffleWidthOverVessel: geometry.baffleWidthOverVessel ?? 0.1,
      });
      return blades;
    }
    case 'constants':
      return twoConstants(constants.laminarConstant.value, constants);
    case 'anchor': {
      const { value: K_1, source, basis } = constants.laminarConstant;
      const laminar = K_1 * ((t - d) / (2 * t)) ** -0.25;
      return twoConstants(laminar, constants, {
        symbol: 'K_L',
        formula: 'K_1 · ((T − D) / (2 · T)) ^ (−0.25)',
        where: { K_1, T: t, D: d },
        value: laminar,
        unit: '1',
        note: `${source} (${basis})`,
      });
    }
    case 'ribbon': {
      const ribbon = {
        impellerDiameterM: d,
        vesselDiameterM: t,
        impellerHeightM: geometry.impellerHeightM ?? d,
        pitchM: geometry.pitchM ?? constants.ribbon.pitchOverDiameter * d,
        bladeWidthM: (geometry.bladeWidthOverDiameter ?? constants.ribbon.widthOverDiameter) * d,
        bladeCount: geometry.bladeCount ?? constants.ribbon.count,
      };
      return twoConstants(ribbonLaminarConstantOf(ribbon), constants, ribbonStep(ribbon));
    }
  }
};

/**
 * Power number over Reynolds number of an impeller in its vessel, with the band in which measured values lie.
 * @error CALC_OUT_OF_RANGE where the diameter ratio lies outside that of the impeller type
 */
export const powerCurveOf = (geometry: ImpellerInVessel): Outcome<PowerCurve, CalculationError> => {
  const constants = impellerConstantsOf(geometry.impeller);
  const [least, most] = diameterRatios[constants.curve];
  const { impellerDiameterM: d, vesselDiameterM: t } = geometry;
  if (d < least * t || d > most * t) {
    return outOfRange({
      field: 'impellerDiameterM',
      given: d,
      unit: 'm',
      allowed: `${String(least)} to ${String(most)} of the vessel diameter for a ${geometry.impeller}`,
    });
  }
  const unbaffled = constants.curve === 'constants' && geometry.baffleCount === 0;
  return succeed({
    constants,
    ...shapeOf(geometry, constants),
    low: unbaffled ? Math.min(unbaffledLow, constants.band.low) : constants.band.low,
    high: constants.band.high,
  });
};

/** What a result of the power curves rests on. */
export const powerCurveSources: readonly SourceReference[] = [
  { citation: 'furukawa-2012', basis: 'from memory, unverified' },
  { citation: 'kamei-hiraoka-1997', basis: 'published' },
  { citation: 'rieger-1988', basis: 'published' },
  { citation: 'beckner-smith-1966', basis: 'from memory, unverified' },
  { citation: 'mccabe-smith-harriott-5 table 9.3', basis: 'published' },
];
