/** @jsxRuntime automatic */
import { Canvas, Page, Text, View } from '@react-pdf/renderer';
import { type ReactNode, useContext } from 'react';
import type { TitleBlockView } from '../views/issue.js';
import { PageCountContext } from './page-count.js';
import { paintTitleBlock } from './paint-title-block.js';
import { type Painter, paintLabel } from './painter.js';
import { edges, ink, px, sheetSize, style } from './print-style.js';
import { printText } from './print-text.js';

const blockWidth = sheetSize.width - edges.left - edges.other;

interface TitleBlockProps {
  readonly block: TitleBlockView;
  readonly subtitle: string;
  readonly scale: string;
}

const TitleBlock = ({ block, subtitle, scale }: TitleBlockProps) => {
  const pages = useContext(PageCountContext);
  return (
    <Canvas
      fixed
      style={{
        position: 'absolute',
        left: edges.left,
        top: sheetSize.height - edges.other - edges.block,
        width: blockWidth,
        height: edges.block,
      }}
      paint={(painter: Painter) => {
        const sheet = `${String(pages.next())}/${String(pages.total)}`;
        paintTitleBlock(painter, { block, subtitle, scale, sheet, width: blockWidth, height: edges.block });
        return null;
      }}
    />
  );
};

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
    {watermark === null ? null : <Watermark text={watermark} />}
  </Page>
);
