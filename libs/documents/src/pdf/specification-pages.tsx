/** @jsxRuntime automatic */
import { Text, View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import { coverPlanOf } from '../drawings/cover-plan.js';
import type { FigureView } from '../views/figures.js';
import type { Row } from '../views/issue.js';
import type { NozzleTable } from '../views/nozzle-tables.js';
import type { PartRow, SpecificationSheetView, SpecificationView } from '../views/specification-view.js';
import { ink, ptPerMm, px, style, textWidth } from './print-style.js';
import { printText } from './print-text.js';
import { SectionFigure } from './section-figure.js';
import { Conformity } from './conformity.js';
import { Sheet } from './sheet.js';
import { sheetCaution } from './sheet-caution.js';
import { StatusMark } from './status-mark.js';

/** Names and values in two columns. */
export const Rows = ({ title, rows }: { title: string; rows: readonly Row[] }) => (
  <View>
    <Text style={[style.section, { marginTop: 0 }]}>{title}</Text>
    {rows.map(({ label, value }, i) => (
      <View key={label} style={[style.row, i === 0 ? { borderTopWidth: 0 } : {}]} wrap={false}>
        <Text style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0, paddingRight: px(6) }}>
          {printText(label)}
        </Text>
        <Text style={[style.strong, style.number]}>{printText(value)}</Text>
      </View>
    ))}
  </View>
);

const Parts = ({ parts }: { parts: readonly PartRow[] }) => (
  <View style={{ marginTop: px(11) }}>
    <Text style={[style.section, { marginTop: 0 }]}>Parts</Text>
    {parts.map(({ number, title, name, status }, i) => (
      <View key={number} style={[style.row, style.dense, i === 0 ? { borderTopWidth: 0 } : {}]} wrap={false}>
        <Text style={[style.strong, { width: px(21) }]}>{String(number)}</Text>
        <Text style={[style.label, { width: px(74), paddingRight: px(4) }]}>{printText(title)}</Text>
        <Text style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>{printText(name)}</Text>
        <View style={{ width: px(14), alignItems: 'flex-end', paddingTop: px(1) }}>
          {status === null || status === 'met' ? null : <StatusMark status={status} size={px(11)} />}
        </View>
      </View>
    ))}
  </View>
);

const Nozzles = ({ table, view, plan }: { table: NozzleTable; view: SpecificationView; plan: number }) => {
  const scene = coverPlanOf(view.drawing, table.set, { labels: 'names' });
  return (
    <View style={{ marginTop: px(11) }} wrap={false}>
      <Text style={[style.section, { marginTop: 0 }]}>{printText(table.heading)}</Text>
      <View style={{ flexDirection: 'row', gap: px(10), alignItems: 'center' }}>
        <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>
          {table.rows.map(({ name, size, place, use }, i) => (
            <View key={name} style={[style.row, style.dense, i === 0 ? { borderTopWidth: 0 } : {}]}>
              <Text style={[style.strong, { width: px(26) }]}>{name}</Text>
              <Text style={{ width: px(40) }}>{printText(size)}</Text>
              {plan < px(150) ? null : (
                <Text style={[style.label, { width: px(104), paddingRight: px(6) }]}>{printText(place)}</Text>
              )}
              <Text style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>{printText(use)}</Text>
            </View>
          ))}
        </View>
        {scene === undefined ? null : (
          <View style={{ width: plan }}>
            <SectionFigure scene={scene} width={plan} height={plan} callouts="none" />
            <Text style={[style.small, { textAlign: 'center' }]}>Cover from above, front below</Text>
          </View>
        )}
      </View>
    </View>
  );
};

const Utilities = ({ rows }: { rows: readonly Row[] }) => (
  <View
    wrap={false}
    style={{
      flexDirection: 'row',
      marginTop: px(12),
      borderTopWidth: px(1.4),
      borderBottomWidth: px(0.7),
      borderColor: ink.ink,
    }}
  >
    {rows.slice(0, 6).map(({ label, value }, i) => (
      <View
        key={label}
        style={{
          flexGrow: 1,
          paddingTop: px(4),
          paddingBottom: px(5),
          paddingLeft: i === 0 ? 0 : px(10),
          paddingRight: px(6),
          borderLeftWidth: i === 0 ? 0 : px(0.7),
          borderColor: ink.hair,
        }}
      >
        <Text style={style.small}>{printText(label)}</Text>
        <Text style={style.strong}>{printText(value)}</Text>
      </View>
    ))}
  </View>
);

const Revisions = ({ view }: { view: SpecificationView }) => (
  <View style={{ marginTop: px(12) }} wrap={false}>
    <View style={style.headRow}>
      <Text style={{ width: px(36) }}>Rev.</Text>
      <Text style={{ flexGrow: 1 }}>What changed</Text>
      <Text style={{ width: px(74) }}>By</Text>
      <Text style={{ width: px(74) }}>Date</Text>
      <Text style={[style.number, { width: px(66) }]}>Price</Text>
    </View>
    {view.revisions.map(({ revision, change, by, date, price }, i) => (
      <View key={revision} style={[style.row, i === 0 ? { borderTopWidth: 0 } : {}]}>
        <Text style={[style.strong, { width: px(36) }]}>{printText(revision)}</Text>
        <Text style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0, paddingRight: px(8) }}>
          {printText(change)}
        </Text>
        <Text style={{ width: px(74) }}>{printText(by)}</Text>
        <Text style={{ width: px(74) }}>{date}</Text>
        <Text style={[style.number, { width: px(66) }]}>{printText(price)}</Text>
      </View>
    ))}
  </View>
);

const remarks = (view: SpecificationView): string =>
  [
    'Lengths in mm.',
    view.drawing.sets.some(({ levels }) => levels !== null)
      ? 'Levels: cold, and at the highest temperature (dashed).'
      : '',
    'Ports are turned into view; fittings, coupling and motor are drawn in proportion. In the plan of the cover, front below, dashed: seal, vessel and what stands in it.',
  ]
    .filter((part) => part !== '')
    .join(' ');

const Figure = ({ figure, numbers }: { figure: FigureView; numbers: SpecificationView['numbers'] }) => (
  <View style={{ width: figure.place.width * ptPerMm }}>
    <SectionFigure
      scene={figure.scene}
      width={figure.place.width * ptPerMm}
      height={figure.place.height * ptPerMm}
      callouts={figure.scene.slots.length === 0 ? 'none' : 'numbers'}
      denominator={figure.denominator}
      numbers={numbers}
    />
    <Text style={[style.small, { marginTop: px(2), marginBottom: px(6) }]}>{printText(figure.caption)}</Text>
  </View>
);

const scaleOf = (figures: readonly FigureView[]): string =>
  figures.length === 0
    ? 'none'
    : [...new Set(figures.map(({ denominator }) => `1 : ${String(denominator)}`))].join(', ');

const NozzleTables = ({
  tables,
  view,
  plan,
}: {
  tables: readonly NozzleTable[];
  view: SpecificationView;
  plan: number;
}) => tables.map((table) => <Nozzles key={table.set} table={table} view={view} plan={plan} />);

const DrawingSheet = ({
  sheet,
  view,
  children,
}: {
  sheet: SpecificationSheetView;
  view: SpecificationView;
  children?: ReactNode;
}) => {
  const width = Math.max(0, ...sheet.figures.map(({ place }) => place.width)) * ptPerMm;
  return (
    <Sheet
      block={view.block}
      title={sheet.title}
      {...(sheet.say === null ? {} : { say: sheet.say })}
      scale={scaleOf(sheet.figures)}
      watermark={view.watermark}
    >
      <View style={{ flexDirection: 'row', gap: px(16), marginTop: px(12) }}>
        <View style={{ width }}>
          {sheet.figures.length === 0 ? <Text style={style.small}>No vessel is chosen yet.</Text> : null}
          {sheet.figures.map((figure) => (
            <Figure key={figure.caption} figure={figure} numbers={view.numbers} />
          ))}
          <Text style={style.small}>{printText(remarks(view))}</Text>
        </View>
        <View style={{ width: textWidth - width - px(16) }}>
          <Rows title="Ratings" rows={sheet.ratings} />
          <Parts parts={sheet.parts} />
          <NozzleTables tables={sheet.nozzles} view={view} plan={px(104)} />
        </View>
      </View>
      {children}
    </Sheet>
  );
};

/** The whole with its tables, then a sheet for every set where there are several. */
export const DrawingSheets = ({ view }: { view: SpecificationView }) =>
  view.sheets.map((sheet, i) => (
    <DrawingSheet key={sheet.title} sheet={sheet} view={view}>
      {i === 0 && view.oneSheet ? <Utilities rows={view.utilities} /> : null}
      {i === 0 && view.oneSheet ? <Revisions view={view} /> : null}
    </DrawingSheet>
  ));

/** What did not fit beside a drawing, and how the law classes it. */
export const ConformitySheets = ({ view }: { view: SpecificationView }) => (
  <Sheet
    block={view.block}
    title={view.nozzles.length === 0 ? 'Conformity' : 'Nozzles and conformity'}
    scale="none"
    watermark={view.watermark}
    care={sheetCaution}
  >
    <NozzleTables tables={view.nozzles} view={view} plan={px(view.nozzles.length > 1 ? 170 : 210)} />
    {view.oneSheet ? null : <Utilities rows={view.utilities} />}
    {view.oneSheet ? null : <Revisions view={view} />}
    <Conformity view={view} />
  </Sheet>
);
