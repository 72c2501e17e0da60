import { StyleSheet } from '@react-pdf/renderer';
import { lightColours } from '../drawings/drawing-style.js';

/** Points per millimetre. */
export const ptPerMm = 72 / 25.4;

/** Pixels of the screen look at 96 dpi in points. */
export const px = (pixels: number): number => pixels * 0.75;

/** Light values on white; hairlines for rows. */
export const ink = { ...lightColours, sheet: '#FFFFFF', hair: '#D3D9D2', rule: '#7C8987' } as const;

/** Colour of what a check says. */
export const statusInk = {
  met: ink.ink,
  'met with caution': ink.caution,
  'not met': ink.fail,
  'outside standard range': ink.special,
  'not decidable': ink.open,
} as const;

export const sans = ['Archivo', 'Source Serif 4'];
export const serif = ['Source Serif 4', 'Archivo'];

/** A4 with 20 mm binding edge and 10 mm elsewhere. */
export const sheetSize = { width: 210 * ptPerMm, height: 297 * ptPerMm } as const;
export const edges = { left: 20 * ptPerMm, other: 10 * ptPerMm, block: px(106) } as const;
export const inside = { x: px(18), y: px(14) } as const;

/** Width between the inner margins of the frame. */
export const textWidth = sheetSize.width - edges.left - edges.other - 2 * inside.x;

export const style = StyleSheet.create({
  page: {
    paddingLeft: edges.left + inside.x,
    paddingRight: edges.other + inside.x,
    paddingTop: edges.other + inside.y,
    paddingBottom: edges.other + edges.block + px(12),
    fontFamily: sans,
    fontSize: px(11.5),
    lineHeight: 1.3,
    color: ink.ink,
    fontFeatureSettings: ['tnum', 'lnum', 'kern'],
  },
  frame: {
    position: 'absolute',
    left: edges.left,
    top: edges.other,
    width: sheetSize.width - edges.left - edges.other,
    height: sheetSize.height - 2 * edges.other,
    borderWidth: px(1.6),
    borderColor: ink.ink,
  },
  head: { flexDirection: 'row', justifyContent: 'space-between', alignItems: 'flex-start' },
  h1: { fontSize: px(24), fontWeight: 600, lineHeight: 1.15 },
  say: { fontFamily: serif, fontSize: px(14.5), lineHeight: 1.38, marginTop: px(4), maxWidth: px(500) },
  revision: {
    borderWidth: px(1.4),
    borderColor: ink.ink,
    paddingVertical: px(2),
    paddingHorizontal: px(9),
    fontWeight: 600,
    fontSize: px(12.5),
    lineHeight: 1.25,
  },
  section: {
    borderTopWidth: px(1.4),
    borderColor: ink.ink,
    paddingTop: px(4),
    marginTop: px(11),
    fontWeight: 600,
    fontSize: px(12),
    lineHeight: 1.3,
  },
  row: {
    flexDirection: 'row',
    borderTopWidth: px(0.7),
    borderColor: ink.hair,
    paddingVertical: px(2.2),
  },
  dense: { paddingVertical: px(1.6), fontSize: px(11), lineHeight: 1.22 },
  headRow: {
    flexDirection: 'row',
    borderTopWidth: px(1.4),
    borderBottomWidth: px(0.7),
    borderColor: ink.ink,
    paddingVertical: px(2.4),
    color: ink.ink2,
    fontSize: px(10),
    lineHeight: 1.3,
  },
  label: { color: ink.ink2 },
  small: { fontSize: px(10), lineHeight: 1.25, color: ink.ink2 },
  title: { fontSize: px(11.5), lineHeight: 1.2, fontWeight: 600 },
  source: { fontSize: px(9.5), lineHeight: 1.2 },
  strong: { fontWeight: 600 },
  number: { textAlign: 'right' },
  serif: { fontFamily: serif, fontSize: px(12.5), lineHeight: 1.36 },
  care: { fontFamily: serif, fontStyle: 'italic', fontSize: px(11.5), lineHeight: 1.3, color: ink.ink2 },
  symbol: { fontFamily: serif, fontStyle: 'italic', fontSize: px(12.5), lineHeight: 1.25 },
});
