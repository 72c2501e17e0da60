import { type Inquiry, type RuleResult } from '@flangewise/model';
import { formatNumber, formatQuantity, type Kind, thinSpace } from '@flangewise/quantities';
import { type FirstLimit, firstLimitOf } from './first-limit';

/** One condition of the process on a dimension line: lowest to highest, usual, and what stops it first. */
export interface RailCondition {
  readonly key: string;
  readonly title: string;
  /** "5 to 60 bar(g)". */
  readonly value: string;
  /** "usual 40", or what the value is about. */
  readonly note: string | undefined;
  readonly kind: Kind;
  readonly lowest: number | undefined;
  readonly usual: number | undefined;
  readonly highest: number | undefined;
  /** Shown on a logarithmic line: the ends are decades apart. */
  readonly isWide: boolean;
  readonly limit: FirstLimit | undefined;
}

/** Where it stands and how it is used: words, no numbers to draw. */
export interface PlaceCondition {
  readonly value: string;
  readonly notes: readonly string[];
}

export interface Conditions {
  readonly rails: readonly RailCondition[];
  readonly place: PlaceCondition;
}

interface Span {
  readonly lowest?: number | undefined;
  readonly usual?: number | undefined;
  readonly highest?: number | undefined;
}

interface RailInput extends Span {
  readonly key: string;
  readonly title: string;
  readonly kind: Kind;
  readonly unit: string;
  readonly note?: string | undefined;
}

const numberIn = (si: number, kind: Kind): string => {
  const text = formatQuantity(si, kind);
  const at = text.lastIndexOf(thinSpace);
  return at < 0 ? text : text.slice(0, at);
};

const rangeText = ({ lowest, highest, usual }: Span, kind: Kind): string => {
  const top = highest ?? usual ?? lowest;
  if (top === undefined) return 'not said';
  const full = formatQuantity(top, kind);
  if (lowest === undefined || lowest === top)
    return highest === undefined && lowest === top ? `from ${full}` : full;
  return `${numberIn(lowest, kind)} to ${full}`;
};

/** Ends further apart than this are drawn on a logarithmic line. */
const wideRatio = 30;

const railOf = (input: RailInput, results: readonly RuleResult[], set: number): RailCondition => {
  const { key, title, kind, unit, lowest, usual, highest } = input;
  const top = highest ?? usual;
  return {
    key,
    title,
    kind,
    value: rangeText(input, kind),
    note: usual === undefined || highest === undefined ? input.note : `usual ${numberIn(usual, kind)}`,
    lowest,
    usual,
    highest,
    isWide: lowest !== undefined && top !== undefined && lowest > 0 && top / lowest > wideRatio,
    limit: top === undefined ? undefined : firstLimitOf(results, { key, unit, highest: top, set }),
  };
};

const liquidName = (inquiry: Inquiry): string | undefined =>
  (inquiry.process.media.find(({ role }) => role === 'solvent') ?? inquiry.process.media[0])?.substance;

const placeOf = ({ site, requirements }: Inquiry): PlaceCondition => {
  const zone =
    site.zone === undefined
      ? 'zone not said'
      : site.zone === 'none'
        ? 'No hazardous area'
        : `Zone ${site.zone}${site.zoneGas === undefined ? '' : `, ${site.zoneGas}`}`;
  const { openingsPerDay } = requirements;
  const use = [
    openingsPerDay === undefined ? undefined : `opened ${formatNumber(openingsPerDay)}${thinSpace}× a day`,
    site.ceilingHeight === undefined
      ? undefined
      : `ceiling ${formatQuantity(site.ceilingHeight, 'length', { unit: 'm' })}`,
  ].filter((one) => one !== undefined);
  return {
    value: zone,
    notes: [use.join(' · '), site.country === undefined ? '' : `site ${site.country}`].filter(
      (one) => one !== '',
    ),
  };
};

const volumeOf = (set: Inquiry['sets'][number] | undefined): RailInput => {
  const base = { kind: 'volume', unit: 'm3' } as const;
  if (set?.batchVolume !== undefined)
    return { ...base, key: 'batch', title: 'Batch', highest: set.batchVolume };
  if (set?.vesselVolume !== undefined)
    return { ...base, key: 'vessel', title: 'Vessel', highest: set.vesselVolume };
  return { ...base, key: 'batch', title: 'Batch', highest: set?.statedVolume };
};

/** The conditions of one vessel set, each with the first limit among the results. */
export const conditionsOfInquiry = (
  inquiry: Inquiry,
  results: readonly RuleResult[],
  set = 0,
): Conditions => {
  const { process } = inquiry;
  const own = inquiry.sets[set];
  const { viscosity } = process;
  const ends = [viscosity?.start, viscosity?.end].filter((one) => one !== undefined);
  const volume = volumeOf(own);
  const inputs: readonly RailInput[] = [
    {
      key: 'pressure',
      title: 'Pressure',
      kind: 'pressure',
      unit: 'Pa',
      ...process.pressure,
      ...own?.pressure,
    },
    {
      key: 'temperature',
      title: 'Temperature',
      kind: 'temperature',
      unit: 'K',
      ...process.temperature,
      ...own?.temperature,
    },
    { ...volume, note: volume.key === 'batch' ? liquidName(inquiry) : undefined },
    {
      key: 'viscosity',
      title: 'Viscosity',
      kind: 'viscosity',
      unit: 'Pa.s',
      lowest: ends.length === 0 ? undefined : Math.min(...ends),
      highest: ends.length === 0 ? undefined : Math.max(...ends),
    },
    { key: 'speed', title: 'Stirring speed', kind: 'speed', unit: '/s', ...process.stirringSpeed },
    ...(process.peakUptake === undefined
      ? []
      : [
          {
            key: 'uptake',
            title: 'Peak gas uptake',
            kind: 'amountFlow',
            unit: 'mol/s',
            highest: process.peakUptake,
          } as const,
        ]),
  ];
  return { rails: inputs.map((input) => railOf(input, results, set)), place: placeOf(inquiry) };
};
