/** @jsxRuntime automatic */
import { Text, View } from '@react-pdf/renderer';
import type { SpecificationView } from '../views/specification-view.js';
import { px, style } from './print-style.js';
import { printText } from './print-text.js';

/** How every set is classed in law; never a certificate. */
export const Conformity = ({ view }: { view: SpecificationView }) => (
  <View>
    {view.conformity.map(({ heading, statement, rows, source }, i) => (
      <View key={i} wrap={false}>
        <Text style={style.section}>{printText(heading)}</Text>
        <Text style={style.serif}>{printText(statement)}</Text>
        <View style={{ flexDirection: 'row', flexWrap: 'wrap', gap: px(18), marginTop: px(4) }}>
          {rows.map(({ label, value }) => (
            <View key={label}>
              <Text style={style.small}>{label}</Text>
              <Text style={style.strong}>{printText(value)}</Text>
            </View>
          ))}
        </View>
        <Text style={[style.small, { marginTop: px(3) }]}>
          {printText(`Rests on ${source}. A classing, never a certificate.`)}
        </Text>
      </View>
    ))}
  </View>
);
