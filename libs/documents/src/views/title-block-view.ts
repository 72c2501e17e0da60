import type { Offer, System } from '@flangewise/model';
import { dateText } from './date-text.js';
import type { Issue, TitleBlockView } from './issue.js';
import { releaseTexts } from './releases.js';

interface TitleBlockInput {
  readonly system: System;
  readonly offer: Offer;
  readonly issue: Issue;
  /** What waits for a release; empty when nothing does. */
  readonly blocking: readonly string[];
}

const counted = (count: number): string => {
  if (count === 0) return '';
  return count === 1 ? '1 point is open' : `${String(count)} points are open`;
};

const releaseOf = ({ offer, issue, blocking }: TitleBlockInput) => {
  if (offer.watermark !== undefined)
    return { released: 'not released', releasedNote: counted(blocking.length) };
  const given = releaseTexts(issue.releases ?? []);
  return given === undefined
    ? { released: 'not released', releasedNote: 'no release required' }
    : { released: given.what, releasedNote: given.by };
};

export const titleBlockView = (input: TitleBlockInput): TitleBlockView => {
  const { system, offer, issue } = input;
  return {
    owner: issue.maker,
    ownerPlace: issue.makerPlace ?? '',
    client: offer.client ?? system.inquiry.client ?? 'client not named',
    clientNote: system.inquiry.contact === undefined ? '' : `for ${system.inquiry.contact}`,
    title: offer.title,
    drawnBy: issue.author ?? '',
    drawnOn: issue.date === undefined ? '' : dateText(issue.date),
    ...releaseOf(input),
    document: `${offer.number}-${offer.revision}`,
    basis: `price list ${offer.priceList}`,
    revision: offer.revision,
  };
};
