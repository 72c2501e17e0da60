import { glassThermalShock } from '@flangewise/engineering';
import { caution, type Judgement, met, notMet, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, fromMemory, published } from '../../source.js';
import { shownDifference } from '../../shown-quantity.js';

const roomK = 293.15;

/** Hoop stress of the pressure in the wall of a tube, thin-wall: the higher one for the walls of the range [Pa]. */
const hoopStressPa = (
  pressurePaGauge: number,
  geometry: { innerDiameterM: number; wallThicknessM: number },
) => (pressurePaGauge * (geometry.innerDiameterM + geometry.wallThicknessM)) / (2 * geometry.wallThicknessM);

export const thermalShock = judgement({
  id: 'heat.thermal-shock',
  title: 'Glass stands the temperature difference',
  group: 'heat',
  kind: 'hard',
  unit: 'K',
  of: { vessel: ['construction', 'thermalShockK', 'geometry'] },
  conditions: ['temperatureMinK', 'temperatureMaxK', 'pressureMaxPaGauge'],
  judge: (
    { vessel },
    { temperatureMinK, temperatureMaxK, pressureMaxPaGauge },
    proof,
  ): Judgement | undefined => {
    if (vessel.construction !== 'glass' || vessel.thermalShockK === null) return undefined;
    if (vessel.thermalShockK <= 0) return notMet(`${vessel.name} stands no temperature difference.`);
    const span = (temperatureMaxK ?? roomK) - (temperatureMinK ?? roomK);
    const allowed = reckon(
      glassThermalShock,
      {
        thicknessM: Math.max(vessel.geometry.wallThicknessM, vessel.geometry.endThicknessM),
        pressureStressPa: hoopStressPa(Math.max(0, pressureMaxPaGauge ?? 0), vessel.geometry),
      },
      proof,
    );
    // Where the pressure uses up the stress, nothing is left for the temperature.
    const differenceK = allowed.ok ? Math.min(vessel.thermalShockK, allowed.value.differenceK) : 0;
    const figures = { demand: `${span.toFixed(0)} K`, limit: `${differenceK.toFixed(0)} K` };
    return span <= differenceK
      ? { ...met, ...figures }
      : {
          ...caution(
            `The process spans ${shownDifference(span, 'up')}; beside the stress of the pressure ${vessel.name} stands ${shownDifference(differenceK, 'down')} between jacket and contents: limit the difference in the controller, heat and cool slowly, and never pour cold on hot glass.`,
          ),
          ...figures,
        };
  },
  met: 'The span of the process stays below the difference that the glass stands beside its pressure.',
  source: [
    published('ISO 3585:1998'),
    published('EN 1595'),
    commonPractice('stresses of pressure and temperature added'),
    fromMemory('120 K between jacket and contents'),
  ],
});
