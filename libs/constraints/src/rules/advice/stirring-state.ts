import { impellerTorque, type ImpellerType } from '@flangewise/engineering';
import { assumedDensityKgPerM3, densityAssumed } from '../../batch-mass.js';
import { type Judgement, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { baffledReads, impellerConditions, impellerInVessel } from '../stirring/impeller-load.js';

/** Reynolds numbers between which a stirred vessel is neither laminar nor turbulent. */
const laminarBelow = 10;
const turbulentFrom = 10_000;

const regimeOf = (reynolds: number): string =>
  reynolds < laminarBelow ? 'laminar' : reynolds < turbulentFrom ? 'transitional' : 'turbulent';

const sweeping: readonly ImpellerType[] = ['anchor', 'double helical ribbon'];

/** What happens at the wanted speed with the chosen baffles, at the thinnest and at the thickest batch. */
export const stirringState = judgement({
  id: 'stirring.state',
  title: 'Flow, torque and tip speed at the wanted speed',
  group: 'stirring',
  kind: 'advice',
  unit: 'N.m',
  of: baffledReads,
  conditions: impellerConditions,
  judge: ({ vessel, stirrer, baffles }, conditions, proof): Judgement | undefined => {
    const { viscosityMinPaS, viscosityMaxPaS, densityKgPerM3, speedMaxPerS } = conditions;
    if (viscosityMaxPaS === undefined || speedMaxPerS === undefined) return undefined;
    const at = (viscosityPaS: number, chosen: typeof baffles, log?: typeof proof) =>
      reckon(
        impellerTorque,
        {
          ...impellerInVessel({ vessel, stirrer, baffles: chosen }),
          densityKgPerM3: densityKgPerM3 ?? assumedDensityKgPerM3,
          viscosityPaS,
          speedPerS: speedMaxPerS,
        },
        log,
      );
    const states = [...new Set([viscosityMinPaS ?? viscosityMaxPaS, viscosityMaxPaS])].map((viscosityPaS) => {
      const chosen = at(viscosityPaS, baffles, proof);
      return { viscosityPaS, chosen, careful: baffles === null ? chosen : at(viscosityPaS, null) };
    });
    const lines = states.flatMap(({ viscosityPaS, chosen }) =>
      chosen.ok
        ? [
            `at ${shownQuantity(viscosityPaS, 'Pa.s')} Re = ${shownQuantity(Number(chosen.value.reynolds.toPrecision(2)), '1')} (${regimeOf(chosen.value.reynolds)}), Np = ${shownQuantity(Number(chosen.value.powerNumber.toPrecision(2)), '1')}, ${shownQuantity(chosen.value.torqueNm, 'N.m')} and ${shownQuantity(chosen.value.powerW, 'W')}`,
          ]
        : [],
    );
    const first = states.find((s) => s.chosen.ok)?.chosen;
    if (first?.ok !== true) return undefined;
    const tip = `tip speed ${shownQuantity(first.value.tipSpeedMPerS, 'm/s')}`;
    const text = `${stirrer.name} at ${shownQuantity(speedMaxPerS, '/s')}: ${lines.join('; ')}; ${tip}.${densityKgPerM3 === undefined ? ` ${densityAssumed}` : ''}`;
    const exceeds = states.some(
      ({ chosen, careful }) =>
        chosen.ok && careful.ok && chosen.value.highTorqueNm > careful.value.highTorqueNm * (1 + 1e-9),
    );
    if (exceeds) {
      return {
        status: 'met with caution',
        text: `${text} ${baffles?.name ?? 'The baffles'} draw more than the four baffles of a tenth that coupling and drive were checked with.`,
      };
    }
    const swirls =
      baffles === null &&
      !sweeping.includes(stirrer.impeller) &&
      first.value.reynolds >= turbulentFrom &&
      stirrer.impeller !== 'magnetic bar';
    return swirls
      ? {
          status: 'met',
          text: `${text} Without baffles a thin batch swirls; thermowell and dip tube break it only in part.`,
        }
      : { status: 'met', text };
  },
  met: 'Nothing is stirred.',
  source: [
    published('kamei-hiraoka-1997'),
    published('rieger-1988'),
    commonPractice('regimes of a stirred vessel'),
  ],
});
