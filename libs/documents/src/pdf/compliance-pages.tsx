/** @jsxRuntime automatic */
import { Text, View } from '@react-pdf/renderer';
import type { CheckRow } from '../views/check-rows.js';
import type { SpecificationView } from '../views/specification-view.js';
import { CheckBar } from './check-bar.js';
import { ink, px, style } from './print-style.js';
import { printText } from './print-text.js';
import { Sheet } from './sheet.js';
import { StatusMark } from './status-mark.js';
import { usualCaution } from './usual-caution.js';

const columns = {
  mark: px(20),
  demand: px(76),
  limit: px(76),
  bar: px(136),
  margin: px(74),
  source: px(118),
} as const;

const tones = {
  met: ink.ink,
  'met with caution': ink.caution,
  'not met': ink.fail,
  'outside standard range': ink.special,
  'not decidable': ink.open,
} as const;

const Figures = ({ row }: { row: CheckRow }) => (
  <View style={{ flexDirection: 'row', alignItems: 'center' }}>
    <Text style={[style.number, style.strong, { width: columns.demand }]}>{printText(row.demand)}</Text>
    <Text style={[style.number, { width: columns.limit }]}>{printText(row.limit)}</Text>
    <View style={{ width: columns.bar, paddingLeft: px(14) }}>
      <CheckBar row={row} />
    </View>
  </View>
);

/** A check that compares numbers shows them, and its words where it is not simply met; one that judges shows its words. */
const Check = ({ row }: { row: CheckRow }) => {
  const compares = row.limit !== '' || (row.demand !== '' && row.demand !== '?');
  const words = <Text style={[style.small, { color: ink.ink }]}>{printText(row.text)}</Text>;
  return (
    <View style={[style.row, { alignItems: 'center', paddingVertical: px(3) }]} wrap={false}>
      <View style={{ width: columns.mark }}>
        <StatusMark status={row.status} size={px(13)} />
      </View>
      <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>
        <View style={{ flexDirection: 'row', alignItems: 'center' }}>
          <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0, paddingRight: px(8) }}>
            <Text style={style.title}>{printText(row.title)}</Text>
            {row.parts === '' ? null : <Text style={style.small}>{`parts ${row.parts}`}</Text>}
          </View>
          {compares ? (
            <Figures row={row} />
          ) : (
            <View style={{ width: columns.demand + columns.limit + columns.bar }}>{words}</View>
          )}
        </View>
        {compares && row.status !== 'met' ? <View style={{ paddingRight: px(14) }}>{words}</View> : null}
      </View>
      <Text style={[style.number, style.strong, { width: columns.margin, color: tones[row.status] }]}>
        {printText(row.margin)}
      </Text>
      <Text style={[style.source, { width: columns.source, paddingLeft: px(12) }]}>
        {printText(row.restsOn)}
      </Text>
    </View>
  );
};

const head = (
  <View fixed style={[style.headRow, { marginTop: px(12) }]}>
    <Text style={{ width: columns.mark }} />
    <Text style={{ flexGrow: 1 }}>Check, parts</Text>
    <Text style={[style.number, { width: columns.demand }]}>Demand</Text>
    <Text style={[style.number, { width: columns.limit }]}>Limit</Text>
    <Text style={{ width: columns.bar, paddingLeft: px(14) }}>Utilisation</Text>
    <Text style={[style.number, { width: columns.margin }]}>Margin</Text>
    <Text style={{ width: columns.source, paddingLeft: px(12) }}>Rests on</Text>
  </View>
);

/** Every check with demand, limit, margin and what it rests on. */
export const ComplianceSheets = ({ view }: { view: SpecificationView }) => (
  <Sheet
    block={view.block}
    title="Compliance summary"
    say={view.checksSentence}
    scale="none"
    watermark={view.watermark}
    care={usualCaution}
  >
    <View>
      {head}
      {view.checks.map((row, i) => (
        <Check key={`${String(i)} ${row.title}`} row={row} />
      ))}
    </View>
    <Text style={[style.small, { marginTop: px(6) }]}>
      {printText(
        `Demands are rounded up, limits and margins down. Pressures are gauge: bar(g). Catalogue ${view.revisionsRest.catalogue}, rules ${view.revisionsRest.rules}.`,
      )}
    </Text>
    <Sentences title="Before this is built" sentences={view.blocking} />
    <Points title="Open points" points={view.openPoints} />
    <Sentences title="Take care" sentences={view.cautions} />
  </Sheet>
);

const Points = ({ title, points }: { title: string; points: SpecificationView['openPoints'] }) =>
  points.length === 0 ? null : (
    <View>
      <Text style={style.section}>{title}</Text>
      {points.map(({ question, why }, i) => (
        <View key={question} style={[style.row, i === 0 ? { borderTopWidth: 0 } : {}]} wrap={false}>
          <View style={{ width: columns.mark, paddingTop: px(1) }}>
            <StatusMark status="not decidable" size={px(12)} />
          </View>
          <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>
            <Text style={style.strong}>{printText(question)}</Text>
            <Text style={style.serif}>{printText(why)}</Text>
          </View>
        </View>
      ))}
    </View>
  );

const Sentences = ({ title, sentences }: { title: string; sentences: readonly string[] }) =>
  sentences.length === 0 ? null : (
    <View>
      <Text style={style.section}>{title}</Text>
      {sentences.map((sentence, i) => (
        <View
          key={`${String(i)} ${sentence}`}
          style={[style.row, i === 0 ? { borderTopWidth: 0 } : {}]}
          wrap={false}
        >
          <Text style={[style.serif, { flexGrow: 1, flexShrink: 1, flexBasis: 0 }]}>
            {printText(sentence)}
          </Text>
        </View>
      ))}
    </View>
  );
