import { caution, met } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** Where the boiling point is not on file, nobody opens a vessel hotter than this [K]. */
const warmK = 333.15;

export const hotContents = judgement({
  id: 'closure.hot-contents',
  title: 'Contents are below boiling before the vessel is opened',
  group: 'closure',
  kind: 'caution',
  unit: 'K',
  of: { closure: ['kind'] },
  conditions: ['temperatureMaxK', 'boilingPointK'],
  judge: ({ closure }, { temperatureMaxK, boilingPointK }) => {
    if (closure.kind === 'bolted' || temperatureMaxK === undefined) return undefined;
    const limit = boilingPointK ?? warmK;
    if (temperatureMaxK < limit) return { ...met, demand: temperatureMaxK, limit };
    const below =
      boilingPointK === undefined
        ? `${shownQuantity(warmK, 'K')} (the boiling point is not on file)`
        : `its boiling point of ${shownQuantity(boilingPointK, 'K', 'down')} at 1 atm`;
    return {
      ...caution(
        `${closure.name}: the batch gets ${shownQuantity(temperatureMaxK, 'K', 'up')} hot. The interlock proves the absence of pressure, not of heat: cool below ${below} before opening, and hold the interlock until then.`,
      ),
      demand: temperatureMaxK,
      limit,
    };
  },
  met: 'The batch stays below its boiling point at 1 atm.',
  source: [commonPractice('hot contents below boiling before a quick-acting closure is opened')],
});
