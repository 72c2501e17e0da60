/** @jsxRuntime automatic */
import { Text, View } from '@react-pdf/renderer';
import { coverPlanOf } from '../drawings/cover-plan.js';
import type { Row } from '../views/issue.js';
import type { NozzleTable } from '../views/nozzle-tables.js';
import { figurePlace, type SpecificationView } from '../views/specification-view.js';
import { ink, ptPerMm, px, style, textWidth } from './print-style.js';
import { printText } from './print-text.js';
import { SectionFigure } from './section-figure.js';
import { Sheet } from './sheet.js';
import { StatusMark } from './status-mark.js';

const figureWidth = figurePlace.width * ptPerMm;
const figureHeight = figurePlace.height * ptPerMm;

/** Lines of ratings, parts and nozzles that fit beside the drawing. */
const columnLines = 41;

/** Letters of a part's name that fit on one line. */
const nameLetters = 27;

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

const Parts = ({ view }: { view: SpecificationView }) => (
  <View style={{ marginTop: px(11) }}>
    <Text style={[style.section, { marginTop: 0 }]}>Parts</Text>
    {view.parts.map(({ number, title, name, status }, i) => (
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
  const scene = coverPlanOf(view.drawing, table.set);
  return (
    <View style={{ marginTop: px(11) }} wrap={false}>
      <Text style={[style.section, { marginTop: 0 }]}>{printText(table.heading)}</Text>
      <View style={{ flexDirection: 'row', gap: px(10), alignItems: 'center' }}>
        <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>
          {table.rows.map(({ name, size, place, use }, i) => (
            <View key={name} style={[style.row, style.dense, i === 0 ? { borderTopWidth: 0 } : {}]}>
              <Text style={[style.strong, { width: px(26) }]}>{name}</Text>
              <Text style={{ width: px(40) }}>{printText(size)}</Text>
              <Text style={[style.label, { width: px(36) }]}>{printText(place)}</Text>
              <Text style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>{printText(use)}</Text>
            </View>
          ))}
        </View>
        {scene === undefined ? null : (
          <View>
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

const captionOf = (view: SpecificationView, denominator: number, broken: boolean): string => {
  const leveled = view.drawing.sets.some(({ levels }) => levels !== null);
  return [
    `Section A–A, 1 : ${String(denominator)}. Lengths in mm.`,
    leveled ? 'Levels: cold, and at the highest temperature (dashed).' : '',
    broken ? 'Stand drawn shortened.' : '',
    'Ports are turned into view; fittings, coupling and motor are drawn in proportion.',
  ]
    .filter((part) => part !== '')
    .join(' ');
};

const linesOf = (view: SpecificationView): number =>
  view.ratings.length +
  view.parts.reduce((sum, { name }) => sum + Math.ceil(name.length / nameLetters), 0) +
  view.nozzles.reduce((sum, table) => sum + table.rows.length + 2, 0);

const Figure = ({ view }: { view: SpecificationView }) => (
  <View style={{ width: figureWidth }}>
    {view.section === null ? null : (
      <SectionFigure
        scene={view.section.scene}
        width={figureWidth}
        height={figureHeight}
        callouts="numbers"
        denominator={view.section.denominator}
      />
    )}
    <Text style={[style.small, { marginTop: px(2) }]}>
      {view.section === null
        ? 'No vessel is chosen yet.'
        : printText(captionOf(view, view.section.denominator, view.section.scene.broken))}
    </Text>
  </View>
);

/** First sheets: the drawing, ratings, parts, nozzles, utilities, revisions; nozzles on a second one where there are many. */
export const SpecificationSheet = ({ view }: { view: SpecificationView }) => {
  const scale = view.section === null ? 'none' : `1 : ${String(view.section.denominator)}`;
  const oneSheet = linesOf(view) <= columnLines;
  const nozzles = (plan: number) =>
    view.nozzles.map((table) => <Nozzles key={table.set} table={table} view={view} plan={plan} />);
  return (
    <>
      <Sheet
        block={view.block}
        title="Technical specification"
        say={view.summary}
        scale={scale}
        watermark={view.watermark}
      >
        <View style={{ flexDirection: 'row', gap: px(16), marginTop: px(12) }}>
          <Figure view={view} />
          <View style={{ width: textWidth - figureWidth - px(16) }}>
            <Rows title="Ratings" rows={view.ratings} />
            <Parts view={view} />
            {oneSheet ? nozzles(px(104)) : null}
          </View>
        </View>
        {oneSheet ? <Utilities rows={view.utilities} /> : null}
        {oneSheet ? <Revisions view={view} /> : null}
      </Sheet>
      {oneSheet ? null : (
        <Sheet block={view.block} title="Nozzles and utilities" scale="none" watermark={view.watermark}>
          {nozzles(px(230))}
          <Utilities rows={view.utilities} />
          <Revisions view={view} />
        </Sheet>
      )}
    </>
  );
};
