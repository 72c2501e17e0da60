import type { Outputs } from '../api/client';
import { isoDayText } from '../figures/moment';
import { StatusMark } from '../look/status-mark';

/** Who released what, and why. */
export function Releases({ releases }: { readonly releases: Outputs['offers']['get']['releases'] }) {
  return releases.map(({ what, note, by, at }) => (
    <p key={what} className="row py-1.5">
      <StatusMark status="met" /> {what === 'discount' ? 'Discount' : 'Special'} released by {by},{' '}
      {isoDayText(at)}: {note}
    </p>
  ));
}
