import type { Item } from '@flangewise/model';
import { batchConditions, batchMass } from '../../batch-mass.js';
import { ambientLoss } from '@flangewise/engineering';
import { type Judgement, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { tapWater, waterFlowKgPerS } from '../heat/removable.js';

const insulationM = 0.03;

const powerOf = (part: Pick<Item, 'electrical'> | null): number => part?.electrical?.powerW ?? 0;

/** What the site has to supply and to bear; parts of one set count once for each vessel that works at once. */
export const utilities = judgement({
  id: 'supply.utilities',
  title: 'What the site supplies and bears',
  group: 'supply',
  kind: 'advice',
  unit: 'W',
  of: {
    vessel: ['massKg', 'geometry', 'depthM'],
    cover: ['massKg'],
    heater: ['electrical'],
    coil: ['tubeDiameterM'],
    limiter: ['electrical'],
    processProbe: ['electrical'],
    frame: ['massKg'],
    lift: ['massKg', 'electrical'],
    drive: ['massKg', 'electrical'],
    circulator: ['massKg', 'electrical'],
    control: ['massKg', 'electrical'],
  },
  conditions: ['vesselsAtOnce', ...batchConditions, 'temperatureMaxK'],
  judge: (parts, conditions, proof): Judgement => {
    const { vessel, cover, coil, frame, lift, drive, circulator, control } = parts;
    const { temperatureMaxK } = conditions;
    const atOnce = Math.max(1, conditions.vesselsAtOnce);
    const shared = [lift, drive, circulator, control].reduce((sum, part) => sum + powerOf(part), 0);
    const ofSet = [parts.heater, parts.limiter, parts.processProbe].reduce((sum, p) => sum + powerOf(p), 0);
    const loadW = shared + ofSet * atOnce;
    const batch = batchMass(conditions);
    const batchKg = batch.kind === 'known' ? batch.value : 0;
    const filled = batch.kind === 'known' ? 'with the batch' : 'empty, for want of the batch volume';
    const massKg =
      [frame, lift, drive, circulator, control].reduce((sum, part) => sum + (part?.massKg ?? 0), 0) +
      (vessel.massKg + cover.massKg + batchKg) * atOnce;
    const water =
      coil === null
        ? ''
        : ` Tap water through the coil: about ${shownQuantity((waterFlowKgPerS(coil.tubeDiameterM) * atOnce * 60) / (tapWater.densityKgPerM3 / 1000), 'L/min')}.`;
    const outerM = vessel.geometry.innerDiameterM + 2 * vessel.geometry.wallThicknessM;
    const loss =
      temperatureMaxK === undefined
        ? undefined
        : reckon(
            ambientLoss,
            {
              surfaceAreaM2: Math.PI * outerM * vessel.depthM + (Math.PI / 2) * outerM ** 2,
              innerTemperatureK: Math.max(temperatureMaxK, 293.15),
              insulationThicknessM: insulationM,
            },
            proof,
          );
    const heat =
      loss?.ok === true
        ? ` Heat to the room at the highest temperature: about ${shownQuantity(loss.value.lossW * atOnce, 'W', 'up')} through 30 mm of insulation.`
        : '';
    return {
      status: 'met',
      text: `Electrical load ${shownQuantity(loadW, 'W', 'up')} in all; mass of the main parts about ${shownQuantity(massKg, 'kg', 'up')} ${filled}${atOnce > 1 ? ` (${String(atOnce)} vessels at once)` : ''}.${water}${heat}`,
      demand: loadW,
    };
  },
  met: 'Nothing is needed.',
  source: [commonPractice('sum of the connected loads; masses of the main parts')],
});
