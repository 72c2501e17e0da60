import type { Outputs } from '../api/client';
import type { Me } from '../api/use-me';

type OfferRecord = Pick<Outputs['offers']['get'], 'state' | 'blocking' | 'waitsFor'>;

/** Who prices offers again and sends them; the API holds to the same. */
export const maySend = ({ role }: Pick<Me, 'role'>): boolean =>
  role === 'applications_engineer' || role === 'sales_support';

export const isUnsent = ({ state }: Pick<OfferRecord, 'state'>): boolean =>
  state === 'draft' || state === 'in_review';

const whatIsWaitedFor = ({ blocking, waitsFor }: OfferRecord): string =>
  waitsFor.length > 0
    ? `an approver to release ${waitsFor.map((what) => `the ${what}`).join(' and ')}`
    : blocking.length > 0
      ? 'an applications engineer to settle what is listed here'
      : 'one of them to send it';

/** Who has the next step with an offer, for those of the house who cannot take it; undefined for whoever can. */
export function whoActs(me: Pick<Me, 'role'>, record: OfferRecord): string | undefined {
  if (me.role === 'customer') return undefined;
  if (maySend(me))
    return isUnsent(record) && record.blocking.length > 0
      ? `It waits for ${whatIsWaitedFor(record)}.`
      : undefined;
  const who = 'Applications engineers and sales support revise and send offers';
  return isUnsent(record)
    ? `${who}; this one waits for ${whatIsWaitedFor(record)}.`
    : `${who}; this one is sent and waits for nothing.`;
}
