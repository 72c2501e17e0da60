/** A run of a formula: on the line, below it or above it. */
export interface FormulaPiece {
  readonly text: string;
  readonly at: 'line' | 'low' | 'high';
}

const marked = /([_^])(\([^()]*\)|[\p{L}\d.,]*[\p{L}\d])/gu;

const bare = (text: string): string => text.replace(/^\((.*)\)$/u, '$1');

/** "V_hot = V t^(2/3)" as it is set: what follows `_` low, what follows `^` high. */
export const formulaPieces = (formula: string): readonly FormulaPiece[] => {
  const pieces: FormulaPiece[] = [];
  let from = 0;
  for (const match of formula.matchAll(marked)) {
    const [whole, mark, text = ''] = match;
    pieces.push({ text: formula.slice(from, match.index), at: 'line' });
    pieces.push({ text: bare(text), at: mark === '_' ? 'low' : 'high' });
    from = match.index + whole.length;
  }
  return [...pieces, { text: formula.slice(from), at: 'line' as const }].filter(({ text }) => text !== '');
};
