/** @jsxRuntime automatic */
import { Canvas, Page, Text, View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import type { TitleBlockView } from '../views/issue.js';
import { paint, type Painter, paintLabel } from './painter.js';
import { edges, ink, px, sheetSize, style } from './print-style.js';
import { printText } from './print-text.js';

/** Sign of first-angle projection, ISO 5456-2. */
const Projection = () => (
  <Canvas
    style={{ width: px(26), height: px(11) }}
    paint={(painter: Painter) => {
      const pen = { colour: ink.ink, width: 0.7 };
      const k = px(1);
      paint(painter, { pen }, () => painter.polygon([k, 3 * k], [12 * k, k], [12 * k, 10 * k], [k, 8 * k]));
      for (const radius of [4.5, 2.4])
        paint(painter, { pen }, () => painter.circle(20 * k, 5.5 * k, radius * k));
      return null;
    }}
  />
);

interface CellProps {
  readonly label: string;
  readonly main: string;
  readonly note?: string;
  readonly share: number;
  readonly upper?: boolean;
  readonly first?: boolean;
  readonly owner?: boolean;
  readonly children?: ReactNode;
}

const Cell = ({ label, main, note, share, upper, first, owner, children }: CellProps) => (
  <View
    style={{
      flexGrow: share,
      flexShrink: 1,
      flexBasis: 0,
      overflow: 'hidden',
      paddingHorizontal: px(8),
      paddingTop: px(3),
      borderLeftWidth: first === true ? 0 : px(0.7),
      borderColor: ink.ink,
    }}
  >
    <Text style={{ fontSize: px(9.5), color: ink.ink2 }}>{label}</Text>
    <View style={{ flexDirection: 'row', alignItems: 'center', gap: px(6) }}>
      <Text
        style={{
          fontSize: px(owner === true ? 17 : upper === true ? (main.length > 24 ? 11.5 : 14) : 12),
          fontWeight: owner === true ? 800 : 600,
          lineHeight: 1.15,
          paddingVertical: px(1.5),
          maxLines: upper === true && main.length > 24 ? 2 : 1,
          textOverflow: 'ellipsis',
        }}
      >
        {printText(main)}
      </Text>
      {children}
    </View>
    {note === undefined ? null : (
      <Text style={{ fontSize: px(10), color: ink.ink2, maxLines: 1, textOverflow: 'ellipsis' }}>
        {printText(note)}
      </Text>
    )}
  </View>
);

const TitleBlock = ({
  block,
  subtitle,
  scale,
}: {
  block: TitleBlockView;
  subtitle: string;
  scale: string;
}) => (
  <View
    fixed
    style={{
      position: 'absolute',
      left: edges.left,
      top: sheetSize.height - edges.other - edges.block,
      width: sheetSize.width - edges.left - edges.other,
      height: edges.block,
      borderWidth: px(1.6),
      borderColor: ink.ink,
    }}
  >
    <View style={{ flexDirection: 'row', height: px(55), borderBottomWidth: px(0.7), borderColor: ink.ink }}>
      <Cell label="Owner" main={block.owner} note={block.ownerPlace} share={4} upper owner first />
      <Cell label="Client" main={block.client} note={block.clientNote} share={4} upper />
      <Cell label="Title" main={block.title} note={subtitle} share={4} upper />
    </View>
    <View style={{ flexDirection: 'row', flexGrow: 1 }}>
      <Cell label="Drawn" main={block.drawnBy} note={block.drawnOn} share={2} first />
      <Cell label="Released" main={block.released} note={block.releasedNote} share={3} />
      <Cell label="Scale, projection" main={scale} note="A4" share={2}>
        <Projection />
      </Cell>
      <Cell label="Document" main={block.document} note={block.basis} share={3} />
      <Cell label="Revision" main={block.revision} share={1} upper />
      <View
        style={{
          flexGrow: 1,
          flexBasis: 0,
          paddingHorizontal: px(8),
          paddingTop: px(3),
          borderLeftWidth: px(0.7),
          borderColor: ink.ink,
        }}
      >
        <Text style={{ fontSize: px(9.5), color: ink.ink2 }}>Sheet</Text>
      </View>
    </View>
  </View>
);

/** Across the sheet while something is not released; pale, so that every figure stays legible. */
const Watermark = ({ text }: { text: string }) => (
  <Canvas
    fixed
    style={{ position: 'absolute', left: 0, top: 0, width: sheetSize.width, height: sheetSize.height }}
    paint={(painter: Painter) => {
      const size = Math.min(64, 1300 / Math.max(12, text.length));
      painter
        .save()
        .translate(sheetSize.width / 2 + 20, sheetSize.height / 2 - 20)
        .rotate(-52)
        .fillOpacity(0.1);
      paintLabel(painter, text, { at: [0, 0], size, colour: ink.fail });
      painter.restore();
      return null;
    }}
  />
);

interface SheetProps {
  readonly block: TitleBlockView;
  readonly title: string;
  readonly say?: string;
  readonly scale: string;
  readonly watermark: string | null;
  /** Repeated above the block on every sheet. */
  readonly care?: string;
  readonly children?: ReactNode;
}

/** One or more sheets with frame, heading, block at the foot, and what must be said on each of them. */
export const Sheet = ({ block, title, say, scale, watermark, care, children }: SheetProps) => (
  <Page
    size="A4"
    style={
      care === undefined ? style.page : [style.page, { paddingBottom: edges.other + edges.block + px(46) }]
    }
    wrap
  >
    <View fixed style={style.frame} />
    <View style={style.head}>
      <View>
        <Text style={style.h1}>{title}</Text>
        {say === undefined ? null : <Text style={style.say}>{printText(say)}</Text>}
      </View>
      <Text style={style.revision}>{`Revision ${block.revision}`}</Text>
    </View>
    {children}
    {care === undefined ? null : (
      <Text
        fixed
        style={[
          style.care,
          {
            position: 'absolute',
            left: edges.left + px(18),
            top: sheetSize.height - edges.other - edges.block - px(38),
            width: sheetSize.width - edges.left - edges.other - px(36),
          },
        ]}
      >
        {printText(care)}
      </Text>
    )}
    <TitleBlock block={block} subtitle={title} scale={scale} />
    <Text
      fixed
      style={{
        position: 'absolute',
        left: sheetSize.width - edges.other - px(57),
        top: sheetSize.height - edges.other - px(35),
        fontSize: px(13),
        fontWeight: 600,
      }}
      render={({ pageNumber, totalPages }) => `${String(pageNumber)}/${String(totalPages)}`}
    />
    {watermark === null ? null : <Watermark text={watermark} />}
  </Page>
);
