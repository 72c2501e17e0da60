import { deratedTorque, highestSpeed } from '@flangewise/engineering';
import { assumedDensityKgPerM3, densityAssumed } from '../../batch-mass.js';
import { type Judgement, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { driveEfficiency } from '../stirring/drive-load.js';
import { impellerInVessel, baffledReads } from '../stirring/impeller-load.js';
import { magnetTemperatureK } from '../stirring/magnet-temperature.js';

export const highestSpeedAdvice = judgement({
  id: 'stirring.highest-speed',
  title: 'Highest speed at the highest viscosity',
  group: 'stirring',
  kind: 'advice',
  unit: '/s',
  of: {
    ...baffledReads,
    coupling: ['ratedTorqueNm', 'magnet', 'cooled', 'maxSpeedPerS'],
    drive: ['maxTorqueNm', 'powerW', 'maxSpeedPerS'],
  },
  conditions: ['viscosityMaxPaS', 'densityKgPerM3', 'serviceFactor', 'temperatureMaxK', 'speedMaxPerS'],
  judge: ({ vessel, stirrer, baffles, coupling, drive }, conditions, proof): Judgement | undefined => {
    const { viscosityMaxPaS, densityKgPerM3, serviceFactor, temperatureMaxK, speedMaxPerS } = conditions;
    if (viscosityMaxPaS === undefined) return undefined;
    const torque = reckon(deratedTorque, {
      magnet: coupling.magnet,
      ratedTorqueNm: coupling.ratedTorqueNm,
      temperatureK: magnetTemperatureK(coupling, temperatureMaxK),
      serviceFactor: 1,
    });
    if (!torque.ok) return undefined;
    const outcome = reckon(
      highestSpeed,
      {
        ...impellerInVessel({ vessel, stirrer, baffles }),
        densityKgPerM3: densityKgPerM3 ?? assumedDensityKgPerM3,
        viscosityPaS: viscosityMaxPaS,
        torqueLimitNm:
          Math.min(torque.value.workingTorqueNm, drive.maxTorqueNm * driveEfficiency) / serviceFactor,
        powerLimitW: (drive.powerW * driveEfficiency) / serviceFactor,
        speedLimitPerS: Math.min(coupling.maxSpeedPerS, drive.maxSpeedPerS),
      },
      proof,
    );
    if (!outcome.ok) return undefined;
    const { speedPerS, limitedBy, highTorqueNm } = outcome.value;
    const text = `At ${shownQuantity(viscosityMaxPaS, 'Pa.s', 'up')} ${stirrer.name} with ${coupling.name} may turn at ${shownQuantity(speedPerS, '/s', 'down')} at most, limited by ${limitedBy}; it then takes up to ${shownQuantity(highTorqueNm, 'N.m', 'up')}.${densityKgPerM3 === undefined ? ` ${densityAssumed}` : ''}`;
    return {
      status: 'met',
      text,
      ...(speedMaxPerS === undefined ? {} : { demand: speedMaxPerS }),
      limit: speedPerS,
    };
  },
  met: 'The speed is not limited.',
  source: [
    published('rieger-1988'),
    published('furukawa-2012'),
    commonPractice('upper end of measured power numbers, service factor'),
  ],
});
