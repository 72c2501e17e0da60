import { expect, it } from 'vitest';
import { formulaPieces } from './formula-pieces';

const shown = (formula: string): string =>
  formulaPieces(formula)
    .map(({ text, at }) => (at === 'line' ? text : `<${at}>${text}</>`))
    .join('');

it('sets indices low and exponents high', () => {
  expect(shown('V_hot = V_cold ρ(T_cold)/ρ(T_hot)')).toBe(
    'V<low>hot</> = V<low>cold</> ρ(T<low>cold</>)/ρ(T<low>hot</>)',
  );
  expect(shown('A t^0.35 + B t^(2/3), t = 1')).toBe('A t<high>0.35</> + B t<high>2/3</>, t = 1');
  expect(shown('Re^0.5')).toBe('Re<high>0.5</>');
});

it('leaves a formula without marks as it is', () => {
  expect(shown('p = ρ g h')).toBe('p = ρ g h');
  expect(formulaPieces('')).toEqual([]);
});
