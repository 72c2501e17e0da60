import { besideBafflesM, besideCoilM, besideStirrerM, throughPortM } from '../../port-clearance.js';
import { obstacle, portsRule } from '../../ports-rule.js';
import { commonPractice } from '../../source.js';

export const coverPorts = portsRule({
  id: 'accessories.ports',
  title: 'Every accessory finds a port of the cover',
  group: 'accessories',
  kind: 'hard',
  host: 'cover',
  users: [
    'relief',
    'pressureGauge',
    'temperatureProbe',
    'coil',
    'gasInlet',
    'sampling',
    'sightGlass',
    'charging',
    'condenser',
    'portPiece',
    'processProbe',
    'limiter',
  ],
  // The tubes of a coil are bent to its circle below the cover; all else that reaches down is straight.
  reachesDown: (part) => part.slot !== 'coil' && part.reachM !== undefined,
  through: throughPortM,
  obstacles: [
    obstacle({
      slot: 'stirrer',
      reads: ['impeller', 'diameterM', 'bladeWidthM', 'shaftDiameterM'],
      leaves: besideStirrerM,
    }),
    obstacle({
      slot: 'coil',
      reads: ['bore', 'coilDiameterM', 'tubeDiameterM', 'innerClearanceM'],
      leaves: besideCoilM,
    }),
    obstacle({ slot: 'baffles', reads: ['bore', 'count', 'widthM'], leaves: besideBafflesM }),
  ],
  conditions: ['freePortsM'],
  met: 'Every accessory has a port of its size or, with a reducer, a larger one, and what reaches down stands clear.',
  source: [
    commonPractice('a port takes its own size and, with a reducer, every smaller one'),
    commonPractice(
      'what reaches down is straight, hangs from an upright port and stands clear of stirrer, coil and baffles by 1 % of the bore, at least 1 mm',
    ),
  ],
});
