type State = 'open' | 'offered' | 'ordered' | 'closed';

const looks: Readonly<Record<State, string>> = {
  open: 'chip',
  offered: 'chip chip-solid',
  ordered: 'chip chip-solid',
  closed: 'chip chip-struck',
};

export function InquiryState({ state }: { readonly state: State }) {
  return <span className={looks[state]}>{state}</span>;
}
