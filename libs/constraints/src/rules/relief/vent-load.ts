import {
  criticalPressureRatio,
  discCoefficient,
  findFluid,
  gasArea,
  ventBackPressure,
  ventThrust,
} from '@flangewise/engineering';
import { absoluteToGauge } from '@flangewise/quantities';
import { isAtMost } from '../../compare.js';
import type { ItemOf } from '@flangewise/model';
import type { Conditions } from '../../conditions.js';
import { caution, type Judgement, notMet, reckon } from '../../figure.js';
import { mainLiquid } from '../../liquid.js';
import { gasesByImportance } from '../../gases-by-importance.js';
import { once } from '../../once.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { isentropicExponent, relievingPressurePaAbs } from './gas-feed.js';

/** A line of the usual length with two bends, until the drawing of the site is there. */
const usualLengthM = 5;
const usualResistance = 2;
const roomK = 293.15;

/**
 * What leaves through the vent: the first gas that the tables know, else the vapour of the main liquid. A full disc
 * passes the more of a gas the heavier it is, so that pressure and thrust in the line are the same for every gas.
 */
const ventedOf = (conditions: Pick<Conditions, 'gases' | 'media'>) => {
  const liquid = mainLiquid(conditions.media)?.name;
  for (const name of [...gasesByImportance(conditions), ...(liquid === undefined ? [] : [liquid])]) {
    const fluid = findFluid(name);
    if (fluid.ok) return fluid.value;
  }
  return undefined;
};

/** The properties of the gas that leaves, beside which only disc and line count. */
const gasOf = (vented: { readonly molarMassKgPerMol: number }, temperatureK: number | undefined) => ({
  temperatureK: temperatureK ?? roomK,
  molarMassKgPerMol: vented.molarMassKgPerMol,
  isentropicExponent,
});

type Disc = Pick<ItemOf<'relief'>, 'burstPressurePaGauge' | 'tolerance' | 'areaM2'>;

/** Flow through the whole disc [kg/s]; undefined where it cannot be worked out. */
const discFlowKgPerS = (
  relief: Disc,
  vented: { readonly molarMassKgPerMol: number },
  conditions: Pick<Conditions, 'temperatureMaxK'>,
): number | undefined => {
  // The area grows with the flow, so that the area for 1 kg/s tells the flow of the whole disc.
  const forOne = reckon(gasArea, {
    ...gasOf(vented, conditions.temperatureMaxK),
    compressibilityFactor: 1,
    inletPressurePaAbs: relievingPressurePaAbs(relief),
    dischargeCoefficient: discCoefficient,
    massFlowKgPerS: 1,
  });
  return forOne.ok ? relief.areaM2 / forOne.value.areaM2 : undefined;
};

const discFlowOnce = once(discFlowKgPerS);

export const ventLoad = judgement({
  id: 'relief.vent-load',
  title: 'Vent line carries the opened disc',
  group: 'relief',
  kind: 'hard',
  unit: 'Pa',
  of: {
    relief: ['burstPressurePaGauge', 'tolerance', 'areaM2'],
    ventLine: ['diameterM', 'rating', 'kind'],
  },
  conditions: ['gases', 'media', 'temperatureMaxK'],
  judge: ({ relief, ventLine }, conditions, proof): Judgement | undefined => {
    const vented = ventedOf(conditions);
    if (ventLine === null || vented === undefined) return undefined;
    const inletPressurePaAbs = relievingPressurePaAbs(relief);
    const gas = gasOf(vented, conditions.temperatureMaxK);
    const massFlowKgPerS = discFlowOnce(relief, vented, conditions);
    if (massFlowKgPerS === undefined) return undefined;
    if (proof !== undefined) {
      const device = { ...gas, compressibilityFactor: 1, inletPressurePaAbs };
      reckon(gasArea, { ...device, dischargeCoefficient: discCoefficient, massFlowKgPerS }, proof);
    }
    const line = { ...gas, massFlowKgPerS, lineDiameterM: ventLine.diameterM };
    const back = reckon(
      ventBackPressure,
      { ...line, lineLengthM: usualLengthM, fittingResistance: usualResistance },
      proof,
    );
    const thrust = reckon(ventThrust, line, proof);
    const critical = reckon(criticalPressureRatio, { isentropicExponent }, proof);
    if (!back.ok || !thrust.ok || !critical.ok) return undefined;
    const { backPressurePaAbs } = back.value;
    const backPaGauge = Math.max(0, absoluteToGauge(backPressurePaAbs));
    const rated = ventLine.rating?.maxPressurePaGauge;
    const shown = `When the disc opens, up to ${shownQuantity(massFlowKgPerS, 'kg/s', 'up')} of ${vented.name} make ${shownQuantity(backPaGauge, 'Pa', 'up')} at the start of ${ventLine.name} (${String(usualLengthM)} m with two bends) and a thrust of ${shownQuantity(thrust.value.designForceN, 'N', 'up')} at its end: anchor it`;
    const figures = {
      demand: backPaGauge,
      ...(rated === undefined ? {} : { limit: rated, utilisation: backPaGauge / rated }),
    };
    if (rated !== undefined && !isAtMost(backPaGauge, rated)) {
      return {
        ...notMet(`${shown}. The line is rated ${shownQuantity(rated, 'Pa', 'down')}: take a wider one.`),
        ...figures,
      };
    }
    if (backPressurePaAbs > critical.value.criticalRatio * inletPressurePaAbs) {
      return {
        ...caution(`${shown}. The back pressure throttles the disc: take a wider or shorter line.`),
        ...figures,
      };
    }
    const tank = ventLine.kind === 'to outside' ? '' : ` The resistance of what it leads to comes on top.`;
    return { status: 'met', text: `${shown}.${tank}`, ...figures };
  },
  met: 'Nothing is vented.',
  source: [
    published('fanno-flow'),
    published('API 520 part I'),
    commonPractice('line of 5 m with two bends, dynamic load factor 2, until the site is drawn'),
  ],
});
