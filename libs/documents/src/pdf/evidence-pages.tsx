/** @jsxRuntime automatic */
import { Text, View } from '@react-pdf/renderer';
import type { EvidenceSheet } from '../views/evidence-sheets.js';
import type { SpecificationView } from '../views/specification-view.js';
import { ink, px, style } from './print-style.js';
import { printText } from './print-text.js';
import { Sheet } from './sheet.js';
import { usualCaution } from './usual-caution.js';

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
      <Text style={style.symbol}>
        {printText(step.formula === '' ? step.symbol : `${step.symbol} = ${step.formula}`)}
      </Text>
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

/** Every step of every calculation: formula, numbers put in, result, range, source. */
export const EvidenceSheets = ({ view }: { view: SpecificationView }) =>
  view.evidence.length === 0 ? null : (
    <Sheet
      block={view.block}
      title="Evidence"
      say="Every calculation behind the checks, to be redone by hand. Inputs are blue; SI units where none is given."
      scale="none"
      watermark={view.watermark}
      care={usualCaution}
    >
      {view.evidence.map((sheet) => (
        <Calculation key={sheet.number} sheet={sheet} />
      ))}
    </Sheet>
  );
