import {
  compressibilityFactor,
  discCoefficient,
  findFluid,
  gasArea,
  regulatorFailedOpenFlow,
} from '@flangewise/engineering';
import { gaugeToAbsolute, normalAtmospherePa } from '@flangewise/quantities';
import { type Figure, known, missing, notApplicable, type Proof, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';

/** Ambient gas feeds the vessel [K]. */
const feedTemperatureK = 293.15;
/** Pressure drop ratio factor of a small globe regulator (IEC 60534-2-1 table, common value). */
const pressureDropRatioFactor = 0.72;
/** Diatomic gases; a larger exponent asks for a smaller area, so that the lower value is the safe one. */
const isentropicExponent = 1.4;

interface Feed {
  readonly gas: string;
  readonly supplyPaGauge: number;
  readonly kv: number;
  readonly relievingPaGauge: number;
}

const areaFor = (feed: Feed, proof: Proof | undefined): Figure => {
  const fluid = findFluid(feed.gas);
  if (!fluid.ok) return missing(`molar mass of ${feed.gas}`);
  const { molarMassKgPerMol } = fluid.value;
  const upstreamPressurePaAbs = gaugeToAbsolute(feed.supplyPaGauge);
  const inletPressurePaAbs = gaugeToAbsolute(feed.relievingPaGauge);
  if (upstreamPressurePaAbs <= inletPressurePaAbs) return known(0);
  const z = reckon(compressibilityFactor, {
    gas: feed.gas,
    pressurePaAbs: upstreamPressurePaAbs,
    temperatureK: feedTemperatureK,
  });
  const compressibility = z.ok ? z.value.compressibilityFactor : 1;
  const flow = reckon(
    regulatorFailedOpenFlow,
    {
      upstreamPressurePaAbs,
      downstreamPressurePaAbs: inletPressurePaAbs,
      temperatureK: feedTemperatureK,
      molarMassKgPerMol,
      isentropicExponent,
      compressibilityFactor: compressibility,
      flowCoefficientKv: feed.kv,
      pressureDropRatioFactor,
    },
    proof,
  );
  if (!flow.ok) return missing(flow.error.message);
  const area = reckon(
    gasArea,
    {
      massFlowKgPerS: flow.value.massFlowKgPerS,
      inletPressurePaAbs,
      backPressurePaAbs: normalAtmospherePa,
      temperatureK: feedTemperatureK,
      molarMassKgPerMol,
      compressibilityFactor: 1,
      isentropicExponent,
      dischargeCoefficient: discCoefficient,
    },
    proof,
  );
  return area.ok ? known(area.value.areaM2) : missing(area.error.message);
};

export const reliefGasArea = comparison({
  id: 'relief.gas-area',
  title: 'Disc passes the gas of a regulator failed open',
  group: 'relief',
  kind: 'hard',
  unit: 'm2',
  utilisation: 'ratio',
  demandOf: {
    gasSupply: ['flowCoefficientKv', 'maxOutletPressurePaGauge'],
    relief: ['burstPressurePaGauge', 'tolerance'],
  },
  limitOf: { relief: ['areaM2'] },
  conditions: ['gases', 'regulatorKv', 'supplyPressurePaGauge'],
  demand: ({ gasSupply, relief }, { gases, regulatorKv, supplyPressurePaGauge }, proof) => {
    const [gas] = gases;
    if (gas === undefined) return notApplicable;
    const kv = regulatorKv ?? gasSupply?.flowCoefficientKv ?? undefined;
    if (kv === undefined) return missing('process.regulatorKv');
    if (supplyPressurePaGauge === undefined) return missing('process.supplyPressure');
    const relievingPaGauge = relief.burstPressurePaGauge * (1 + relief.tolerance);
    return areaFor({ gas, supplyPaGauge: supplyPressurePaGauge, kv, relievingPaGauge }, proof);
  },
  limit: ({ relief }) => known(relief.areaM2),
  say: ({ demand, limit, parts }) =>
    `With the regulator failed open the gas asks for ${demand}; ${parts.relief.name} gives ${limit}.`,
  source: [
    published('IEC 60534-2-1'),
    published('API 520 part I'),
    commonPractice('regulator failed open as the worst gas inflow; x_T 0.72, k 1.4'),
  ],
});
