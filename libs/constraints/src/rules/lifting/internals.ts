import { isAtMost } from '../../compare.js';
import { known, met, notApplicable, notMet } from '../../figure.js';
import { comparison, partRule } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { clearanceM } from './stroke.js';

export const internalsClear = partRule({
  id: 'lifting.internals',
  title: 'Stroke clears coil, probes and dip tubes',
  group: 'lifting',
  kind: 'hard',
  unit: 'm',
  each: ['coil', 'temperatureProbe', 'gasInlet', 'sampling', 'processProbe'],
  reads: ['reachM'],
  beside: { lift: ['strokeM'] },
  conditions: [],
  judge: (part, _, { beside: { lift } }) => {
    if (lift === null || part.reachM === undefined) return undefined;
    const demand = part.reachM + clearanceM;
    const figures = { demand, limit: lift.strokeM, utilisation: demand / lift.strokeM };
    return isAtMost(demand, lift.strokeM)
      ? { ...met, ...figures }
      : {
          ...notMet(
            `${part.name} with its clearance needs a stroke of ${shownQuantity(demand, 'm', 'up')}; ${lift.name} has ${shownQuantity(lift.strokeM, 'm', 'down')}.`,
          ),
          ...figures,
        };
  },
  met: 'The stroke of the lift clears everything that reaches into the vessel.',
  source: [commonPractice('stroke over the internals')],
});

/** A vessel that is lowered to clear the internals must not meet the floor. */
export const floorClear = comparison({
  id: 'lifting.floor',
  title: 'Lowered vessel stays above the floor',
  group: 'lifting',
  kind: 'hard',
  unit: 'm',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: { shaft: ['lengthM'], lift: ['moves'] },
  limitOf: { frame: ['heightM'], vessel: ['depthM', 'geometry'] },
  conditions: [],
  demand: ({ shaft, lift }) => (lift?.moves === 'vessel' ? known(shaft.lengthM + clearanceM) : notApplicable),
  limit: ({ frame, vessel }) => known(frame.heightM - vessel.depthM - vessel.geometry.endThicknessM),
  say: ({ demand, limit, parts }) =>
    `${parts.vessel.name} is lowered by ${demand} to clear ${parts.shaft.name}; from its bottom to the floor there are ${limit}, less what hangs on its bottom port.`,
  source: [commonPractice('room below the lowered vessel')],
});
