/** @jsxRuntime automatic */
import { Text, View } from '@react-pdf/renderer';
import type { CheckRow } from '../views/check-rows.js';
import type { SpecificationView } from '../views/specification-view.js';
import { CheckBar } from './check-bar.js';
import { ink, px, statusInk, style } from './print-style.js';
import { printText } from './print-text.js';
import { fillSheets, linesOf } from './fill-sheets.js';
import { Sheet } from './sheet.js';
import { StatusMark } from './status-mark.js';
import { sheetCaution } from './sheet-caution.js';

const columns = {
  mark: px(20),
  demand: px(76),
  limit: px(76),
  bar: px(136),
  margin: px(74),
  source: px(118),
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
      <Text style={[style.number, style.strong, { width: columns.margin, color: statusInk[row.status] }]}>
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

/** Estimated height of a row [px]: its words, its parts, what it rests on. */
const rowHeight = (row: CheckRow): number => {
  const compares = row.limit !== '' || (row.demand !== '' && row.demand !== '?');
  const name =
    linesOf(row.title, 27) * 13.8 + (row.parts === '' ? 0 : linesOf(`parts ${row.parts}`, 36) * 12.5);
  const words = compares ? (row.status === 'met' ? 0 : linesOf(row.text, 84) * 12.5) : 0;
  const beside = compares ? 0 : linesOf(row.text, 43) * 12.5;
  return Math.max(Math.max(name, beside) + words, linesOf(row.restsOn, 18) * 11.4) + 6.7;
};

/** Room for rows under the heading [px]. */
const room = { first: 775, next: 825 } as const;

const hasPoints = (view: SpecificationView): boolean =>
  view.blocking.length + view.openPoints.length + view.cautions.length > 0;

/** How many sheets they take if none runs over. */
export const complianceSheetCount = (view: SpecificationView): number =>
  fillSheets(view.checks, rowHeight, room).length + (hasPoints(view) ? 1 : 0);

/** Every check with demand, limit, margin and what it rests on; then what is open and what to take care of. */
export const ComplianceSheets = ({ view }: { view: SpecificationView }) => {
  const sheets = fillSheets(view.checks, rowHeight, room);
  return (
    <>
      {sheets.map((rows, i) => (
        <Sheet
          key={i}
          block={view.block}
          title={i === 0 ? 'Compliance summary' : 'Compliance summary, continued'}
          {...(i === 0 ? { say: view.checksSentence } : {})}
          scale="none"
          watermark={view.watermark}
          care={sheetCaution}
        >
          <View>
            {head}
            {rows.map((row, k) => (
              <Check key={`${String(k)} ${row.title}`} row={row} />
            ))}
          </View>
          {i < sheets.length - 1 ? null : (
            <Text style={[style.small, { marginTop: px(6) }]}>
              {printText(
                `Demands are rounded up, limits and margins down. Pressures are gauge: bar(g). Catalogue ${view.revisionsRest.catalogue}, rules ${view.revisionsRest.rules}.`,
              )}
            </Text>
          )}
        </Sheet>
      ))}
      {!hasPoints(view) ? null : (
        <Sheet
          block={view.block}
          title="Open points"
          scale="none"
          watermark={view.watermark}
          care={sheetCaution}
        >
          <Sentences title="Before this is built" sentences={view.blocking} />
          <Points title="Please tell us" points={view.openPoints} />
          <Sentences title="Take care" sentences={view.cautions} />
        </Sheet>
      )}
    </>
  );
};
