/** @jsxRuntime automatic */
import { Text, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { OfferView } from '../views/offer-view.js';
import { linesOf } from './fill-sheets.js';
import { ink, px, style } from './print-style.js';
import { printText } from './print-text.js';
import { Sheet } from './sheet.js';
import { sheetCaution } from './sheet-caution.js';
import { StatusMark } from './status-mark.js';

const columns = { position: px(28), item: px(66), quantity: px(34), price: px(86), total: px(92) } as const;

const Address = ({ view }: { view: OfferView }) => (
  <View style={{ flexDirection: 'row', justifyContent: 'space-between', marginTop: px(26) }}>
    <View style={{ width: px(330) }}>
      <Text style={style.small}>
        {printText(`${view.block.owner}${view.block.ownerPlace === '' ? '' : `, ${view.block.ownerPlace}`}`)}
      </Text>
      <Text style={{ fontSize: px(14), fontWeight: 600, marginTop: px(6) }}>{printText(view.client)}</Text>
      {view.contact === null ? null : <Text style={{ fontSize: px(13) }}>{printText(view.contact)}</Text>}
    </View>
    <View style={{ width: px(190) }}>
      {[
        ['Offer', view.number],
        ['Date', view.date ?? 'not dated'],
        ['Valid until', view.validUntil ?? 'not set'],
        ['Delivery', `${String(view.deliveryWeeks)} weeks`],
      ].map(([label, value], i) => (
        <View
          key={label}
          style={[style.row, i === 0 ? { borderTopWidth: px(1.4), borderColor: ink.ink } : {}]}
        >
          <Text style={[style.label, { width: px(80) }]}>{label}</Text>
          <Text style={[style.strong, style.number, { flexGrow: 1 }]}>{printText(value ?? '')}</Text>
        </View>
      ))}
    </View>
  </View>
);

/** Price of one and of all of a position; without a line there is the heading, and nothing where prices are not shown. */
const PriceCells = ({ view, line }: { view: OfferView; line?: OfferView['positions'][number] }) => {
  if (view.positions.every(({ unitPrice, total }) => unitPrice === null && total === null)) return null;
  const [each, together] =
    line === undefined ? ['Each', 'Together'] : [line.unitPrice ?? '', line.total ?? ''];
  return (
    <>
      <Text style={[style.number, { width: columns.price }]}>{printText(each)}</Text>
      <Text style={[style.number, { width: columns.total }]}>{printText(together)}</Text>
    </>
  );
};

const PriceTable = ({ view }: { view: OfferView }) => (
  <View style={{ marginTop: px(18) }}>
    <View style={style.headRow} fixed>
      <Text style={{ width: columns.position }}>Pos.</Text>
      <Text style={{ width: columns.item }}>Item</Text>
      <Text style={{ flexGrow: 1 }}>What, where</Text>
      <Text style={[style.number, { width: columns.quantity }]}>Qty</Text>
      <PriceCells view={view} />
    </View>
    {view.positions.map((line, i) => (
      <View key={line.position} style={[style.row, i === 0 ? { borderTopWidth: 0 } : {}]} wrap={false}>
        <Text style={[style.label, { width: columns.position }]}>{line.position}</Text>
        <Text style={{ width: columns.item }}>{printText(line.item)}</Text>
        <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0, paddingRight: px(8) }}>
          <View style={{ flexDirection: 'row', gap: px(4), alignItems: 'center' }}>
            <Text style={[style.strong, { flexShrink: 1 }]}>{printText(line.name)}</Text>
            {line.special ? <StatusMark status="outside standard range" size={px(11)} /> : null}
          </View>
          <Text style={style.small}>
            {printText(line.note === null ? line.use : `${line.use}. ${line.note}`)}
          </Text>
        </View>
        <Text style={[style.number, { width: columns.quantity }]}>{line.quantity}</Text>
        <PriceCells view={view} line={line} />
      </View>
    ))}
    <View wrap={false} style={{ marginLeft: 'auto', width: px(300), marginTop: px(2) }}>
      {view.totals.map(({ label, value, strong }, i) => (
        <View
          key={label}
          style={[style.row, i === 0 || strong ? { borderTopWidth: px(1.4), borderColor: ink.ink } : {}]}
        >
          <Text style={[strong ? { fontWeight: 600, fontSize: px(14) } : {}, { flexGrow: 1 }]}>
            {printText(label)}
          </Text>
          <Text style={[style.number, strong ? { fontWeight: 600, fontSize: px(14) } : {}]}>
            {printText(value)}
          </Text>
        </View>
      ))}
    </View>
  </View>
);

const Options = ({ view }: { view: OfferView }) =>
  view.options.length === 0 ? null : (
    <View wrap={false}>
      <Text style={style.section}>Options, not in the total</Text>
      {view.options.map(({ name, price, note }, i) => (
        <View key={name} style={[style.row, i === 0 ? { borderTopWidth: 0 } : {}]}>
          <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>
            <Text style={style.strong}>{printText(name)}</Text>
            {note === '' ? null : <Text style={style.small}>{printText(note)}</Text>}
          </View>
          <Text style={[style.number, { width: columns.total }]}>{printText(price)}</Text>
        </View>
      ))}
    </View>
  );

const Delivery = ({ view }: { view: OfferView }) => (
  <View wrap={false}>
    <Text style={style.section}>{`Delivery, ${String(view.deliveryWeeks)} weeks`}</Text>
    <Text style={style.serif}>The longest chain decides; steps in working days.</Text>
    <View style={{ flexDirection: 'row', flexWrap: 'wrap', marginTop: px(4) }}>
      {view.deliveryChain.map(({ label, value }, i) => (
        <View
          key={label}
          style={{
            paddingRight: px(12),
            paddingLeft: i === 0 ? 0 : px(12),
            borderLeftWidth: i === 0 ? 0 : px(0.7),
            borderColor: ink.rule,
            maxWidth: px(220),
          }}
        >
          <Text style={style.small}>{printText(label)}</Text>
          <Text style={style.strong}>{printText(value)}</Text>
        </View>
      ))}
    </View>
  </View>
);

/** Rows under a heading that stays with the first of them. */
const Headed = ({ title, rows: [first, ...others] }: { title: string; rows: readonly ReactElement[] }) =>
  first === undefined ? null : (
    <View>
      <View wrap={false}>
        <Text style={style.section}>{title}</Text>
        {first}
      </View>
      {others}
    </View>
  );

const ListRow = ({ sentence, index }: { sentence: string; index: number }) => (
  <View style={[style.row, index === 0 ? { borderTopWidth: 0 } : {}]} wrap={false}>
    <Text style={[style.label, { width: px(18) }]}>{String(index + 1)}</Text>
    <Text style={[style.serif, { flexGrow: 1, flexShrink: 1, flexBasis: 0 }]}>{printText(sentence)}</Text>
  </View>
);

const List = ({ title, sentences }: { title: string; sentences: readonly string[] }) => (
  <Headed
    title={title}
    rows={sentences.map((sentence, index) => (
      <ListRow key={`${String(index)} ${sentence}`} sentence={sentence} index={index} />
    ))}
  />
);

const OpenPoints = ({ view }: { view: OfferView }) => (
  <Headed
    title="Please tell us"
    rows={view.openPoints.map(({ question, why }, i) => (
      <View key={question} style={[style.row, i === 0 ? { borderTopWidth: 0 } : {}]} wrap={false}>
        <View style={{ width: px(20), paddingTop: px(1) }}>
          <StatusMark status="not decidable" size={px(12)} />
        </View>
        <View style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>
          <Text style={style.strong}>{printText(question)}</Text>
          <Text style={style.serif}>{printText(why)}</Text>
        </View>
      </View>
    ))}
  />
);

/** Estimated height of what a letter says [px], by its lists. */
const heightOf = (view: OfferView): number => {
  const list = (sentences: readonly string[]): number =>
    sentences.length === 0 ? 0 : 31 + sentences.reduce((sum, one) => sum + linesOf(one, 98) * 17 + 5, 0);
  const positions = view.positions.reduce(
    (sum, { name, note, use }) =>
      sum + linesOf(name, 55) * 15 + linesOf(`${use} ${note ?? ''}`, 75) * 12.5 + 5,
    0,
  );
  const questions = view.openPoints.reduce((sum, { why }) => sum + 20 + linesOf(why, 98) * 17, 31);
  const options = view.options.length === 0 ? 0 : 31 + view.options.length * 32;
  return 250 + positions + 85 + options + 80 + list(view.terms) + questions + list(view.cautions) + 25;
};

/** How many sheets the letter is likely to take; a guess that saves painting it twice. */
export const offerSheetCount = (view: OfferView): number => Math.max(1, Math.ceil(heightOf(view) / 860));

/** The letter: to whom, what for, at which price, until when, on which terms, what is still open. */
export const OfferSheets = ({ view }: { view: OfferView }) => (
  <Sheet block={view.block} title="Offer" scale="none" watermark={view.watermark} care={sheetCaution}>
    <Address view={view} />
    <Text style={{ fontSize: px(17), fontWeight: 600, marginTop: px(26) }}>{printText(view.title)}</Text>
    <Text style={[style.say, { maxWidth: px(600) }]}>
      {printText(
        `We offer, as specified in document ${view.number}: ${view.scope.charAt(0).toLowerCase() === 'a' ? view.scope.charAt(0).toLowerCase() + view.scope.slice(1) : view.scope}`,
      )}
    </Text>
    <PriceTable view={view} />
    <Options view={view} />
    <Delivery view={view} />
    <List title="Terms" sentences={view.terms} />
    <OpenPoints view={view} />
    <List title="Take care" sentences={view.cautions} />
    <Text style={[style.small, { marginTop: px(10) }]}>{printText(`${view.basis}.`)}</Text>
  </Sheet>
);
