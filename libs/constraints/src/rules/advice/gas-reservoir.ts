import { uptakeReservoir } from '@flangewise/engineering';
import { gaugeToAbsolute } from '@flangewise/quantities';
import type { Conditions } from '../../conditions.js';
import { caution, type Judgement, reckon } from '../../figure.js';
import { gasesByImportance } from '../../gases-by-importance.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { isPerGas } from '../heat/reaction-heat.js';

const roomK = 293.15;
/** What a regulator needs above the vessel to keep on feeding [Pa]. */
const regulatorDropPa = 5e5;

/** One mole of gas a mole of what is dissolved, where nobody said how many. */
const uptakeOf = ({
  concentrationMolPerM3,
  batchVolumeM3,
}: Pick<Conditions, 'concentrationMolPerM3' | 'batchVolumeM3'>): number | undefined =>
  concentrationMolPerM3 === undefined || batchVolumeM3 === undefined
    ? undefined
    : concentrationMolPerM3 * batchVolumeM3;

export const gasReservoir = judgement({
  id: 'supply.gas-reservoir',
  title: 'Reservoir for the gas uptake',
  group: 'supply',
  kind: 'advice',
  unit: 'm3',
  of: { gasSupply: ['kind', 'reservoirVolumeL', 'reservoirPressurePaGauge'] },
  conditions: [
    'gases',
    'media',
    'concentrationMolPerM3',
    'batchVolumeM3',
    'pressureMaxPaGauge',
    'heatOfReactionPer',
  ],
  judge: ({ gasSupply }, conditions, proof): Judgement | undefined => {
    const { pressureMaxPaGauge } = conditions;
    const [gas] = gasesByImportance(conditions);
    const uptakeMol = uptakeOf(conditions);
    if (gas === undefined || gasSupply === null || gasSupply.kind !== 'dosing reservoir') return undefined;
    const { reservoirVolumeL, reservoirPressurePaGauge } = gasSupply;
    if (reservoirVolumeL === null || reservoirPressurePaGauge === null) return undefined;
    if (uptakeMol === undefined || uptakeMol <= 0 || pressureMaxPaGauge === undefined) return undefined;
    const endPaGauge = pressureMaxPaGauge + regulatorDropPa;
    if (endPaGauge >= reservoirPressurePaGauge) {
      return caution(
        `${gasSupply.name} holds ${shownQuantity(reservoirPressurePaGauge, 'Pa', 'down')}: with ${shownQuantity(pressureMaxPaGauge, 'Pa', 'up')} in the vessel and what the regulator needs it gives nothing off.`,
      );
    }
    const filling = reckon(
      uptakeReservoir,
      {
        gas,
        uptakeMol,
        startPressurePaAbs: gaugeToAbsolute(reservoirPressurePaGauge),
        endPressurePaAbs: gaugeToAbsolute(endPaGauge),
        temperatureK: roomK,
        reservoirVolumeM3: reservoirVolumeL / 1000,
      },
      proof,
    );
    if (!filling.ok) return undefined;
    const { volumeForOneFillingM3, amountPerFillingMol, refills } = filling.value;
    const counted = isPerGas(conditions)
      ? ` for each mole of ${gas} that a mole of the reactant takes up`
      : '';
    return {
      status: 'met',
      text: `${gasSupply.name} gives off ${shownQuantity(amountPerFillingMol ?? 0, 'mol')} of ${gas} a filling down to ${shownQuantity(endPaGauge, 'Pa')} (real gas); ${shownQuantity(uptakeMol, 'mol')}${counted} need ${String(refills ?? 0)} refills, or a reservoir of ${shownQuantity(volumeForOneFillingM3, 'm3', 'up')} for one filling.`,
      demand: volumeForOneFillingM3,
      limit: reservoirVolumeL / 1000,
    };
  },
  met: 'No reservoir is needed.',
  source: [
    published('real-gas law with the reference equation of state of the gas'),
    commonPractice('regulator keeps 5 bar above the vessel; uptake by pressure drop of a known volume'),
  ],
});
