/** @jsxRuntime automatic */
import type { RuleSample } from '@flangewise/model';
import { Link, Page, Text, View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import type { RuleIndex } from '../views/rule-index.js';
import type { NumberedRule, RuleBookView } from '../views/rule-book-view.js';
import { FormulaText } from './formula-text.js';
import { edges, ink, px, sheetSize, statusInk, style } from './print-style.js';
import { printText } from './print-text.js';
import { sheetCaution } from './sheet-caution.js';
import { StatusMark } from './status-mark.js';

const foot = px(34);

/** A page of the book: frame, heading, foot with the state of the rules and the number of the page. */
const BookPage = ({
  view,
  title,
  id,
  children,
}: {
  view: RuleBookView;
  title: string;
  id?: string;
  children: ReactNode;
}) => (
  <Page size="A4" style={[style.page, { paddingBottom: edges.other + foot + px(8) }]} wrap>
    <View fixed style={style.frame} />
    <View {...(id === undefined ? {} : { id })} style={style.head}>
      <Text style={[style.h1, { fontSize: px(19), maxWidth: px(600) }]}>{printText(title)}</Text>
    </View>
    {children}
    <View
      fixed
      style={{
        position: 'absolute',
        left: edges.left + px(18),
        right: edges.other + px(18),
        top: sheetSize.height - edges.other - foot,
        flexDirection: 'row',
        gap: px(12),
      }}
    >
      <Text style={[style.source, { flexGrow: 1, flexShrink: 1, flexBasis: 0, color: ink.ink2 }]}>
        {printText(`${view.maker}. Rule book, rules ${view.revision}. ${sheetCaution}`)}
      </Text>
      <Text style={style.small} render={({ pageNumber }) => String(pageNumber)} />
    </View>
  </Page>
);

const Section = ({ title, children }: { title: string; children: ReactNode }) => (
  <View style={{ marginTop: px(10) }}>
    <View minPresenceAhead={px(36)}>
      <Text style={[style.section, { marginTop: 0 }]}>{title}</Text>
    </View>
    {children}
  </View>
);

const Parts = ({ rule }: { rule: NumberedRule }) => (
  <View>
    {rule.parts.map(({ slot, title, as, attributes }, i) => (
      <View
        key={`${slot} ${as ?? ''}`}
        style={[style.row, style.dense, i === 0 ? { borderTopWidth: 0 } : {}]}
        wrap={false}
      >
        <Text style={[style.strong, { width: px(120) }]}>{title}</Text>
        <Text style={[style.label, { width: px(90) }]}>{as ?? ''}</Text>
        <Text style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>{printText(attributes.join(', '))}</Text>
      </View>
    ))}
  </View>
);

const Calculation = ({ calculation }: { calculation: NumberedRule['calculations'][number] }) => (
  <View style={{ paddingVertical: px(3), borderTopWidth: px(0.7), borderColor: ink.hair }}>
    <Text style={style.title}>{printText(calculation.title)}</Text>
    <View style={{ flexDirection: 'row', flexWrap: 'wrap', columnGap: px(14) }}>
      {calculation.formulas.map((formula) => (
        <FormulaText key={formula} formula={formula} />
      ))}
    </View>
    <Text style={style.small}>
      {printText(
        `Holds for ${calculation.range}. Rests on ${calculation.source
          .map(({ citation, basis }) => (basis === 'published' ? citation : `${citation} (${basis})`))
          .join('; ')}.`,
      )}
    </Text>
  </View>
);

const Sample = ({ sample, first }: { sample: RuleSample; first: boolean }) => {
  const { says } = sample;
  return (
    <View style={[style.row, style.dense, first ? { borderTopWidth: 0 } : {}]} wrap={false}>
      <Text style={{ width: px(150), paddingRight: px(8) }}>{printText(sample.name)}</Text>
      <View style={{ width: px(118), flexDirection: 'row', gap: px(4) }}>
        {says === 'silent' ? null : <StatusMark status={says} size={px(11)} />}
        <Text style={says === 'silent' ? style.label : [style.strong, { color: statusInk[says] }]}>
          {says}
        </Text>
      </View>
      <Text style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0 }}>
        {printText(sample.texts.join(' ') || 'Has nothing to say.')}
      </Text>
    </View>
  );
};

const RuleSheet = ({ rule, view }: { rule: NumberedRule; view: RuleBookView }) => (
  <BookPage view={view} title={`${String(rule.number)}  ${rule.title}`} id={rule.id}>
    <Text style={style.small}>{`${rule.id} · ${rule.group} · ${rule.kind}`}</Text>
    <Text style={[style.serif, { marginTop: px(5) }]}>
      {printText(
        [...rule.decides, rule.effect, ...(rule.met === undefined ? [] : [`Met means: ${rule.met}`])].join(
          ' ',
        ),
      )}
    </Text>
    {rule.margin === undefined ? null : (
      <Text style={[style.serif, { marginTop: px(2) }]}>{printText(`Margin: ${rule.margin}`)}</Text>
    )}
    {rule.parts.length === 0 ? null : (
      <Section title="What it reads of the parts">
        <Parts rule={rule} />
      </Section>
    )}
    {rule.conditions.length === 0 ? null : (
      <Section title="What it reads of the process">
        <Text style={{ paddingTop: px(2) }}>{printText(`${rule.conditions.join('; ')}.`)}</Text>
      </Section>
    )}
    {rule.calculations.length === 0 ? null : (
      <Section title="Calculations behind it">
        {rule.calculations.map((calculation) => (
          <Calculation key={calculation.id} calculation={calculation} />
        ))}
      </Section>
    )}
    <Section title="What it says of its cases">
      {rule.samples.map((sample, i) => (
        <Sample key={`${sample.name} ${String(i)}`} sample={sample} first={i === 0} />
      ))}
    </Section>
    <Section title="Rests on">
      {rule.sources.map(({ full, basis }) => (
        <Text key={`${full} ${basis}`} style={[style.dense, { paddingVertical: px(1) }]}>
          {printText(basis === 'published' ? full : `${full} (${basis})`)}
        </Text>
      ))}
    </Section>
  </BookPage>
);

const IndexSheet = ({ index, view }: { index: RuleIndex; view: RuleBookView }) => (
  <BookPage view={view} title={index.title}>
    <View style={{ marginTop: px(8) }}>
      {index.entries.map(({ title, note, rules }) => (
        <View key={title} style={[style.row, style.dense]} wrap={false}>
          <Text style={{ width: px(330), paddingRight: px(10) }}>
            {printText(note === undefined || note === 'published' ? title : `${title} (${note})`)}
          </Text>
          <View
            style={{
              flexGrow: 1,
              flexShrink: 1,
              flexBasis: 0,
              flexDirection: 'row',
              flexWrap: 'wrap',
              columnGap: px(7),
            }}
          >
            {rules.map((number) => (
              <Link
                key={number}
                src={`#${view.rules[number - 1]?.id ?? ''}`}
                style={{ color: ink.given, textDecoration: 'none' }}
              >
                {String(number)}
              </Link>
            ))}
          </View>
        </View>
      ))}
    </View>
  </BookPage>
);

const Contents = ({ view }: { view: RuleBookView }) => (
  <BookPage view={view} title="Rule book">
    <Text style={style.say}>{printText(view.say)}</Text>
    <View style={{ marginTop: px(10) }}>
      {view.rules.map(({ number, id, title, kind, group }) => (
        <View key={id} style={[style.row, style.dense]} wrap={false}>
          <Text style={[style.strong, { width: px(30) }]}>{String(number)}</Text>
          <Link
            src={`#${id}`}
            style={{ flexGrow: 1, flexShrink: 1, flexBasis: 0, color: ink.given, textDecoration: 'none' }}
          >
            {printText(title)}
          </Link>
          <Text style={[style.label, { width: px(110) }]}>{group}</Text>
          <Text style={[style.label, { width: px(50) }]}>{kind}</Text>
        </View>
      ))}
    </View>
  </BookPage>
);

/** Contents, the indexes, then a page a rule. */
export const RuleBookSheets = ({ view }: { view: RuleBookView }) => (
  <>
    <Contents view={view} />
    {view.indexes
      .filter(({ entries }) => entries.length > 0)
      .map((index) => (
        <IndexSheet key={index.title} index={index} view={view} />
      ))}
    {view.rules.map((rule) => (
      <RuleSheet key={rule.id} rule={rule} view={view} />
    ))}
  </>
);
