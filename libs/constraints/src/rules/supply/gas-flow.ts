import { regulatorFailedOpenFlow } from '@flangewise/engineering';
import { gaugeToAbsolute } from '@flangewise/quantities';
import { type Figure, known, missing, notApplicable, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { gasFeedConditions, gasFeedOf } from '../relief/gas-feed.js';

/** A regulator holds its pressure up to about this share of what it passes wide open. */
const steadyShare = 0.5;

export const gasFlow = comparison({
  id: 'supply.gas-flow',
  title: 'Gas supply feeds the highest uptake',
  group: 'supply',
  kind: 'caution',
  unit: 'mol/s',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: { gasSupply: ['flowCoefficientKv', 'reservoirPressurePaGauge'] },
  conditions: [...gasFeedConditions, 'peakUptakeMolPerS', 'pressureMaxPaGauge'],
  demand: (_, { peakUptakeMolPerS }) =>
    peakUptakeMolPerS === undefined ? notApplicable : known(peakUptakeMolPerS),
  limit: ({ gasSupply }, conditions, proof): Figure => {
    const { pressureMaxPaGauge, supplyPressurePaGauge, peakUptakeMolPerS } = conditions;
    if (gasSupply === null || gasSupply.flowCoefficientKv === null || peakUptakeMolPerS === undefined)
      return notApplicable;
    if (pressureMaxPaGauge === undefined) return missing('process.pressure.highest');
    const sourcePaGauge = gasSupply.reservoirPressurePaGauge ?? supplyPressurePaGauge;
    const feed = gasFeedOf(gasSupply, {
      ...conditions,
      ...(sourcePaGauge === undefined ? {} : { supplyPressurePaGauge: sourcePaGauge }),
    });
    if (feed.kind === 'no gas') return notApplicable;
    if (feed.kind === 'missing') return missing(...feed.fields);
    const { supply } = feed;
    const flowCoefficientKv = Math.min(gasSupply.flowCoefficientKv, conditions.regulatorKv ?? Infinity);
    const downstreamPressurePaAbs = gaugeToAbsolute(pressureMaxPaGauge);
    if (supply.supplyPressurePaAbs <= downstreamPressurePaAbs) return known(0);
    const flow = reckon(
      regulatorFailedOpenFlow,
      {
        upstreamPressurePaAbs: supply.supplyPressurePaAbs,
        downstreamPressurePaAbs,
        temperatureK: supply.gasTemperatureK,
        molarMassKgPerMol: supply.gasMolarMassKgPerMol,
        isentropicExponent: supply.gasIsentropicExponent,
        compressibilityFactor: supply.gasCompressibilityFactor,
        flowCoefficientKv,
        pressureDropRatioFactor: supply.pressureDropRatioFactor,
      },
      proof,
    );
    return flow.ok
      ? known((flow.value.massFlowKgPerS / supply.gasMolarMassKgPerMol) * steadyShare)
      : missing(flow.error.message);
  },
  say: ({ demand, limit, parts }) =>
    `At its peak the reaction takes up ${demand}; ${parts.gasSupply?.name ?? 'the supply'} passes about ${limit} steadily at the highest pressure.`,
  source: [
    published('IEC 60534-2-1'),
    commonPractice('a regulator holds its pressure up to half of its full flow'),
  ],
});
