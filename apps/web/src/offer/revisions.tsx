import type { Outputs } from '../api/client';
import { isoDayText } from '../figures/moment';
import { OfferState } from './offer-state';

/** Every letter of an offer, the newest first. */
export function Revisions({ revisions }: { readonly revisions: Outputs['offers']['get']['revisions'] }) {
  return (
    <ul>
      {revisions.map((one) => (
        <li key={one.revision} className="row flex flex-wrap items-center gap-x-3 gap-y-1 py-1.5">
          <OfferState revision={one.revision} state={one.state} />
          <span>
            {one.author}, {isoDayText(one.sentAt ?? one.createdAt)}
          </span>
          <span className="lab">
            {one.priceList}, {one.ruleRevision}
          </span>
        </li>
      ))}
    </ul>
  );
}
