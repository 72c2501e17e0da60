import { known, notApplicable } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Time a day that may go into opening and closing before a quick-acting closure pays. */
const openingTimePerDayS = 1800;

export const openingTime = comparison({
  id: 'closure.opening-time',
  title: 'Opening does not take the day',
  group: 'closure',
  kind: 'hard',
  unit: 's',
  utilisation: 'ratio',
  demandOf: { closure: ['openingTimeS'] },
  limitOf: {},
  conditions: ['openingsPerDay'],
  demand: ({ closure }, { openingsPerDay }) =>
    openingsPerDay === undefined || openingsPerDay < 2
      ? notApplicable
      : known(closure.openingTimeS * openingsPerDay * 2),
  limit: () => known(openingTimePerDayS),
  say: ({ demand, limit, parts }, { openingsPerDay }) =>
    `Opened ${String(openingsPerDay ?? 0)} times a day, ${parts.closure.name} takes ${demand} a day for opening and closing; ${limit} is the most. Often opened, a quick-acting closure is chosen.`,
  source: [commonPractice('bolted is the default, quick-acting when opened often')],
});
