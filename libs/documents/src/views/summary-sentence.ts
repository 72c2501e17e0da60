import type { Item, System } from '@flangewise/model';
import { formatNumber, formatQuantity, thinSpace } from '@flangewise/quantities';
import { indefiniteArticle } from './indefinite-article.js';

const volumesOf = (system: System, items: ReadonlyMap<string, Item>): string[] =>
  system.sets.flatMap(({ choices, count }) => {
    const vessel = typeof choices.vessel === 'string' ? items.get(choices.vessel) : undefined;
    if (vessel?.slot !== 'vessel') return [];
    const small = vessel.nominalVolumeL < 0.1;
    const volume = small
      ? `${formatNumber(vessel.nominalVolumeL * 1000)}${thinSpace}mL`
      : `${formatNumber(vessel.nominalVolumeL)}${thinSpace}L`;
    return [count > 1 ? `${String(count)} × ${volume}` : volume];
  });

const timesText = (count: number): string =>
  count === 1 ? 'once' : count === 2 ? 'twice' : `${formatNumber(count)} times`;

/** "An 8 L stirred pressure reactor", "2 × 1 L stirred pressure reactors". */
const reactorsText = (volumes: readonly string[]): string => {
  const [first = '', ...others] = volumes;
  const reactor = 'stirred pressure reactor';
  if (first === '') return `A ${reactor}`;
  if (others.length > 0 || first.includes('×')) return `${volumes.join(' and ')} ${reactor}s`;
  return `${indefiniteArticle(first) === 'an' ? 'An' : 'A'} ${first} ${reactor}`;
};

/** What the system is for, in one sentence from the inquiry. */
export const summarySentence = (system: System, items: ReadonlyMap<string, Item>): string => {
  const { process, site, requirements } = system.inquiry;
  const solvent = process.media.find(({ role }) => role === 'solvent')?.substance;
  const limits = [
    process.pressure?.highest === undefined
      ? undefined
      : formatQuantity(process.pressure.highest, 'pressure', { rounding: 'up' }),
    process.temperature?.highest === undefined
      ? undefined
      : formatQuantity(process.temperature.highest, 'temperature', { rounding: 'up' }),
  ].filter((limit) => limit !== undefined);
  const kind = process.kind === undefined || process.kind === 'other' ? 'reactions' : process.kind;
  const parts = [
    `${reactorsText(volumesOf(system, items))} for ${kind}`,
    solvent === undefined ? '' : ` in ${solvent}`,
    limits.length === 0 ? '' : ` to ${limits.join(' and ')}`,
    requirements.openingsPerDay === undefined
      ? ''
      : `, opened ${timesText(requirements.openingsPerDay)} a day`,
    site.zone === undefined
      ? ''
      : site.zone === 'none'
        ? ', outside hazardous areas'
        : `, in zone ${site.zone}`,
  ];
  return `${parts.join('')}.`;
};
