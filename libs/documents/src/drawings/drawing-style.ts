import type { HatchMaterial, LineType } from './scene.js';

/** Colours of the drawing, light; the names are those of the CSS variables without dashes. */
export const lightColours = {
  sheet: '#FBFCF9',
  ink: '#171F25',
  ink2: '#49555C',
  given: '#0B4F80',
  centre: '#A24A1E',
  met: '#23694A',
  caution: '#8A5A00',
  fail: '#B3221D',
  special: '#5A3C9B',
  open: '#55616A',
  'fail-t': '#F9E1DC',
  'special-t': '#E9E4F5',
  'w-steel': '#E4E3F0',
  'w-ni': '#E9E6CF',
  'w-re': '#E2E6EC',
  'w-al': '#E4ECEE',
  'w-el': '#F2EEE4',
  'w-gl': '#E3F0F5',
  'w-ins': '#F7EEDF',
  'w-liq': '#DCEDEE',
  'w-gas': '#F6F7F0',
  'w-water': '#A9D2E6',
  'w-heat': '#F4D9C8',
  mag: '#2A3138',
  mag2: '#9AA3A8',
  part: '#FFFFFF',
  hl: '#6FA6AC',
} as const;

export type DrawingColour = keyof typeof lightColours;

/** Ground under the hatch. */
export const hatchGrounds: Readonly<Record<HatchMaterial, DrawingColour>> = {
  steel: 'w-steel',
  nickel: 'w-ni',
  reactive: 'w-re',
  aluminium: 'w-al',
  polymer: 'w-el',
  glass: 'w-gl',
  insulation: 'w-ins',
  liquid: 'w-liq',
};

export interface LineStyle {
  /** Width on screen [px] and on paper [mm]; ISO 128-2 groups on paper. */
  readonly px: number;
  readonly mm: number;
  readonly colour: DrawingColour;
  /** Dashes in screen pixels. */
  readonly dash?: readonly number[];
}

export const lineStyles: Readonly<Record<Exclude<LineType, 'none'>, LineStyle>> = {
  cut: { px: 1.45, mm: 0.5, colour: 'ink' },
  edge: { px: 1, mm: 0.35, colour: 'ink' },
  fine: { px: 0.8, mm: 0.25, colour: 'ink' },
  thin: { px: 0.6, mm: 0.18, colour: 'ink' },
  hidden: { px: 0.6, mm: 0.18, colour: 'ink', dash: [4, 2.4] },
  centre: { px: 0.75, mm: 0.25, colour: 'centre', dash: [12, 2.6, 2.2, 2.6] },
  level: { px: 0.9, mm: 0.25, colour: 'given' },
  'hot level': { px: 0.9, mm: 0.25, colour: 'given', dash: [4, 2.4] },
  disc: { px: 1.9, mm: 0.6, colour: 'ink' },
};

export const lineClass = (line: LineType): string => `l-${line.replace(' ', '-')}`;

const variable = (colour: DrawingColour): string => `var(--${colour})`;

const lineRules = Object.entries(lineStyles).map(
  ([line, style]) =>
    `.dr .${lineClass(line as LineType)}{stroke:${variable(style.colour)};stroke-width:${String(style.px)}px;${style.dash === undefined ? '' : `stroke-dasharray:${style.dash.join(' ')};`}vector-effect:non-scaling-stroke;stroke-linejoin:round}`,
);

const groundRules = [...new Set(Object.values(hatchGrounds))].map(
  (ground) => `.dr .${ground}{fill:${variable(ground)}}`,
);

/** Style sheet of the drawing; colours are CSS variables of the page. Put once on a page that shows drawings. */
export const drawingStyle = [
  '.dr{display:block;width:100%;height:auto;font-family:var(--sans,Archivo,Arial,sans-serif);font-variant-numeric:tabular-nums lining-nums}',
  '.dr *{fill:none}',
  '.dr .l-none{stroke:none}',
  ...lineRules,
  ...groundRules,
  '.dr .h{stroke:var(--ink);opacity:.78}.dr .hl{stroke:var(--hl)}',
  '.dr .f-part{fill:var(--part)}.dr .f-solid{fill:var(--ink)}.dr .f-gas{fill:var(--w-gas)}.dr .f-heat{fill:var(--w-heat)}.dr .f-water{fill:var(--w-water)}',
  '.dr .f-magnet{fill:var(--mag)}.dr .f-counter-magnet{fill:var(--mag2)}.dr .f-sheet{fill:var(--sheet)}',
  '.dr text{fill:var(--ink)}.dr .plate{paint-order:stroke;stroke:var(--part);stroke-linejoin:round;font-weight:600;font-stretch:80%}',
  '.dr .is-fail .l-cut,.dr .is-fail .l-edge,.dr .is-fail .l-fine{stroke:var(--fail);stroke-width:1.7px}.dr .is-fail .f-part{fill:var(--fail-t)}',
  '.dr .is-special .l-cut,.dr .is-special .l-edge{stroke:var(--special);stroke-width:1.5px}.dr .is-special .f-part{fill:var(--special-t)}',
  '.dr .is-selected .l-cut,.dr .is-selected .l-edge{stroke-width:2.2px}',
  '.dr a{cursor:pointer}.dr a:focus-visible{outline:2px solid var(--given);outline-offset:2px}',
  '.dr .lead{stroke:var(--ink);stroke-width:.8px}.dr .dot{fill:var(--ink)}',
  '.dr .dim{stroke:var(--ink2);stroke-width:.6px}.dr .dima,.dr text.d{fill:var(--ink2)}.dr text.d{paint-order:stroke;stroke:var(--sheet);stroke-width:3px;stroke-linejoin:round;font-size:11px;font-weight:500;font-stretch:88%}',
  '.dr text.c1{font-size:11px;font-stretch:92%;fill:var(--ink2)}.dr text.c2{font-size:13px;font-weight:600;font-stretch:94%}.dr text.c3{font-size:11.5px;font-stretch:94%;fill:var(--ink2)}',
  '.dr .bal{fill:var(--sheet);stroke:var(--ink);stroke-width:.9px}.dr text.bt{font-size:11px;font-weight:600}.dr text.lb{font-size:13px;font-weight:600}',
  ...['met', 'caution', 'fail', 'special', 'open'].flatMap((key) => [
    `.dr .s-${key}{color:var(--${key})}.dr text.t-${key}{fill:var(--${key})}`,
  ]),
  ...['fail', 'special', 'caution', 'open'].map((key) => `.dr .lead.t-${key}{stroke:var(--${key})}`),
  '.dr .m-ink{fill:currentColor}.dr .m-ground{fill:var(--sheet)}.dr .ms-ink{stroke:currentColor}.dr .ms-ground{stroke:var(--sheet)}',
].join('\n');

/** The light palette for a file that stands alone. */
export const lightVariables = `.dr{${Object.entries(lightColours)
  .map(([name, value]) => `--${name}:${value}`)
  .join(';')}}`;
