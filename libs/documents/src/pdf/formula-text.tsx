/** @jsxRuntime automatic */
import { Text } from '@react-pdf/renderer';
import { px, style } from './print-style.js';
import { printText } from './print-text.js';

/** Stretches of a formula: what follows an underscore stands lower, up to the end of the name. */
const stretches = (formula: string): readonly { readonly text: string; readonly low: boolean }[] =>
  formula
    .split(/(_[\p{L}\p{N},.]+)/u)
    .filter((text) => text !== '')
    .map((text) =>
      /^_[\p{L}\p{N}]/u.test(text) ? { text: text.slice(1), low: true } : { text, low: false },
    );

/** A formula in italics with its indices set low. */
export const FormulaText = ({ formula }: { formula: string }) => (
  <Text style={style.symbol}>
    {stretches(printText(formula)).map(({ text, low }, i) =>
      low ? (
        <Text key={i} style={{ fontSize: px(9), verticalAlign: 'sub' }}>
          {text}
        </Text>
      ) : (
        text
      ),
    )}
  </Text>
);
