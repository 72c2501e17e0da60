type State = 'draft' | 'in_review' | 'sent' | 'replaced';

const looks: Readonly<Record<State, { readonly look: string; readonly word: string }>> = {
  draft: { look: 'chip', word: 'draft' },
  in_review: { look: 'chip chip-review', word: 'waits for review' },
  sent: { look: 'chip chip-solid', word: 'sent' },
  replaced: { look: 'chip chip-struck', word: 'replaced' },
};

/** Revision letter and state of an offer. */
export function OfferState({ revision, state }: { readonly revision: string; readonly state: State }) {
  const { look, word } = looks[state];
  return (
    <span className={look}>
      <b className="font-semibold">{revision}</b> {word}
    </span>
  );
}
