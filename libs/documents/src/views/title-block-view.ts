import type { Offer, System } from '@flangewise/model';
import { dateText } from './date-text.js';
import type { Issue, TitleBlockView } from './issue.js';

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

export const titleBlockView = ({ system, offer, issue, blocking }: TitleBlockInput): TitleBlockView => ({
  owner: issue.maker,
  ownerPlace: issue.makerPlace ?? '',
  client: offer.client ?? system.inquiry.client ?? 'client not named',
  clientNote: system.inquiry.contact === undefined ? '' : `for ${system.inquiry.contact}`,
  title: offer.title,
  drawnBy: issue.author ?? '',
  drawnOn: issue.date === undefined ? '' : dateText(issue.date),
  released: offer.watermark === undefined ? (issue.releasedBy ?? 'released') : 'not released',
  releasedNote: offer.watermark === undefined ? '' : counted(blocking.length),
  document: `${offer.number}-${offer.revision}`,
  basis: `price list ${offer.priceList}`,
  revision: offer.revision,
});
