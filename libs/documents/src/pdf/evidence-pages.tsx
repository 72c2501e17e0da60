/** @jsxRuntime automatic */
import { Text, View } from '@react-pdf/renderer';
import type { EvidenceSheet } from '../views/evidence-sheets.js';
import type { SpecificationView } from '../views/specification-view.js';
import { FormulaText } from './formula-text.js';
import { ink, px, style } from './print-style.js';
import { printText } from './print-text.js';
import { fillSheets, linesOf } from './fill-sheets.js';
import { Sheet } from './sheet.js';
import { sheetCaution } from './sheet-caution.js';

const columns = { number: px(18), symbol: px(150), value: px(104) } as const;

const StepRow = ({
  step,
  number,
  last,
}: {
  step: EvidenceSheet['steps'][number];
  number: number;
  last: boolean;
}) => (
  <View style={[style.row, number === 1 ? { borderTopWidth: 0 } : {}]} wrap={false}>
    <Text style={[style.label, { width: columns.number }]}>{String(number)}</Text>
    <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0, paddingRight: px(8) }}>
      <FormulaText formula={step.formula === '' ? step.symbol : `${step.symbol} = ${step.formula}`} />
      {step.note === '' ? null : <Text style={style.small}>{printText(step.note)}</Text>}
    </View>
    <Text style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0, paddingRight: px(8) }}>
      {printText(step.substituted)}
    </Text>
    <Text style={[style.number, { width: columns.value }, last ? style.strong : {}]}>
      {printText(step.value)}
    </Text>
  </View>
);

const Calculation = ({ sheet }: { sheet: EvidenceSheet }) => (
  <View style={{ marginTop: px(12) }}>
    <View wrap={false} minPresenceAhead={px(60)}>
      <Text style={[style.section, { marginTop: 0 }]}>
        {printText(`${String(sheet.number)}  ${sheet.title}`)}
      </Text>
      <Text style={style.small}>{printText(`for ${sheet.checks.join(', ')}`)}</Text>
      <Text style={[style.small, { color: ink.given }]}>{printText(sheet.inputs)}</Text>
    </View>
    {sheet.steps.map((step, i) => (
      <StepRow key={i} step={step} number={i + 1} last={i === sheet.steps.length - 1} />
    ))}
    <Text style={[style.small, { borderTopWidth: px(0.7), borderColor: ink.hair, paddingTop: px(2) }]}>
      {printText(`Holds for ${sheet.range}. Rests on ${sheet.source}.`)}
    </Text>
  </View>
);

/** Estimated height of a calculation [px]. */
const heightOf = (sheet: EvidenceSheet): number => {
  const small = (text: string, letters: number): number => linesOf(text, letters) * 12.5;
  const steps = sheet.steps.map(({ symbol, formula, substituted, note }) =>
    Math.max(
      linesOf(`${symbol} = ${formula}`, 46) * 15.7 + (note === '' ? 0 : small(note, 62)),
      linesOf(substituted, 44) * 15,
    ),
  );
  const text =
    small(sheet.checks.join(', '), 125) + small(sheet.inputs, 122) + small(sheet.range + sheet.source, 118);
  return 34 + text + steps.reduce((sum, height) => sum + height + 5.1, 0);
};

/** Room for calculations under the heading [px]. */
const room = { first: 790, next: 835 } as const;

const sheetsOf = (view: SpecificationView): EvidenceSheet[][] =>
  fillSheets(view.evidence, heightOf, room).filter((sheets) => sheets.length > 0);

/** How many sheets they take if none runs over. */
export const evidenceSheetCount = (view: SpecificationView): number => sheetsOf(view).length;

/** Every step of every calculation: formula, numbers put in, result, range, source. */
export const EvidenceSheets = ({ view }: { view: SpecificationView }) =>
  sheetsOf(view).map((sheets, i) => (
    <Sheet
      key={i}
      block={view.block}
      title={i === 0 ? 'Evidence' : 'Evidence, continued'}
      {...(i === 0
        ? {
            say: 'Every calculation behind the checks, to be redone by hand. Inputs are blue; SI units where none is given.',
          }
        : {})}
      scale="none"
      watermark={view.watermark}
      care={sheetCaution}
    >
      {sheets.map((sheet) => (
        <Calculation key={sheet.number} sheet={sheet} />
      ))}
    </Sheet>
  ));
