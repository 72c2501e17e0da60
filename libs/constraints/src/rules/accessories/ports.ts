import { portsRule } from '../../rule.js';
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
    'processProbe',
    'limiter',
  ],
  conditions: [],
  met: 'Every accessory has a port of its size or, with a reducer, a larger one.',
  source: [commonPractice('a port takes its own size and, with a reducer, every smaller one')],
});
