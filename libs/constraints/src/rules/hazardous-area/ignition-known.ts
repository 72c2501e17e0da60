import { notDecidable } from '../../figure.js';
import { judgement } from '../../rule.js';
import { published } from '../../source.js';

export const ignitionKnown = judgement({
  id: 'hazardous-area.ignition-known',
  title: 'Ignition data of every medium are on file',
  group: 'hazardous area',
  kind: 'hard',
  of: { vessel: [] },
  conditions: ['ignitionUnknown'],
  judge: (_, { ignitionUnknown }) =>
    ignitionUnknown === undefined
      ? undefined
      : notDecidable(
          `${ignitionUnknown.join(', ')}: no ignition data are on file, and nothing says that it does not burn. Gas group and temperature class were taken from the other media; name the substance or its CAS number, or give autoignition temperature and gas group with their source.`,
          ...ignitionUnknown.map((name) => `ignition data of ${name}`),
        ),
  met: 'The ignition data of every medium are on file.',
  source: [published('iec-60079-20-1:2010')],
});
