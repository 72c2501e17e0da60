import type { SlotPath, Status } from '@flangewise/model';
import type { Callout, Sheet } from './arrange-sheet.js';
import { figure, type Point } from './contour.js';
import type { Dimension, Scene } from './scene.js';
import { statusKeys, statusMarks } from './status-mark.js';
import { escaped, shortened } from './svg-text.js';

interface LinkOptions {
  readonly href?: (path: SlotPath) => string;
  readonly selected?: SlotPath;
}

/** The mark of a state around a point. */
export const markSvg = (status: Status, [x, y]: Point, scale: number): string => {
  const pieces = statusMarks[status].map(
    ({ d, fill, stroke, width, dash }) =>
      `<path class="${fill === 'none' ? '' : `m-${fill} `}${stroke === 'none' ? '' : `ms-${stroke}`}" ${width === 0 ? '' : `stroke-width="${String(width)}" `}${dash === undefined ? '' : `stroke-dasharray="${dash.join(' ')}" `}d="${d}"/>`,
  );
  return `<g class="s-${statusKeys[status]}" transform="translate(${figure(x)} ${figure(y)}) scale(${figure(scale)})">${pieces.join('')}</g>`;
};

const points = (line: readonly Point[]): string =>
  line.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${figure(x)} ${figure(y)}`).join('');

/** The middle of the widest stretch of a vertical dimension line that no leader crosses. */
export const clearHeight = (x: number, [from, to]: Point, sheet: Sheet): number => {
  const crossed = sheet.callouts
    .filter(({ line }) => (line[2][0] - x) * (line[3][0] - x) < 0)
    .map(({ line }) => line[3][1])
    .filter((y) => y > from && y < to)
    .toSorted((a, b) => a - b);
  const stops = [from, ...crossed, to];
  const middle = (from + to) / 2;
  const stretches = stops
    .slice(1)
    .map((end, i) => ({ size: end - (stops[i] ?? from), at: (end + (stops[i] ?? from)) / 2 }));
  const wide = stretches.filter(({ size }) => size >= 34);
  const nearest = (wide.length > 0 ? wide : stretches).toSorted(
    (a, b) => Math.abs(a.at - middle) - Math.abs(b.at - middle),
  )[0];
  return nearest?.at ?? middle;
};

const dimensionSvg = (dimension: Dimension, sheet: Sheet): string => {
  const { scale, origin } = sheet;
  const toSheet = ([x, y]: Point): Point => [origin[0] + scale * x, origin[1] + scale * y];
  const [[x1, y1], [x2, y2]] = [toSheet(dimension.from), toSheet(dimension.to)];
  if (dimension.kind === 'vertical') {
    const x = origin[0] + scale * dimension.at;
    const beyond = (end: number): number => x + (end < x ? 4 : -4);
    return [
      `<path class="dim" d="${points([
        [x1, y1],
        [beyond(x1), y1],
      ])}${points([
        [x2, y2],
        [beyond(x2), y2],
      ])}${points([
        [x, y1],
        [x, y2],
      ])}"/>`,
      `<path class="dima" d="M${figure(x)} ${figure(y1)}l-1.9 7h3.8zM${figure(x)} ${figure(y2)}l-1.9 -7h3.8z"/>`,
      `<text class="d" transform="translate(${figure(x - 4)} ${figure(clearHeight(x, [y1, y2], sheet))}) rotate(-90)" text-anchor="middle">${escaped(dimension.text)}</text>`,
    ].join('');
  }
  const y = origin[1] + scale * dimension.at;
  return [
    `<path class="dim" d="${points([
      [x1, y1],
      [x1, y + 4],
    ])}${points([
      [x2, y2],
      [x2, y + 4],
    ])}${points([
      [x1, y],
      [x2, y],
    ])}"/>`,
    `<path class="dima" d="M${figure(x1)} ${figure(y)}l7 -1.9v3.8zM${figure(x2)} ${figure(y)}l-7 -1.9v3.8z"/>`,
    `<text class="d" x="${figure((x1 + x2) / 2)}" y="${figure(y - 4)}" text-anchor="middle">${escaped(dimension.text)}</text>`,
  ].join('');
};

export const dimensionsSvg = (scene: Scene, sheet: Sheet): string =>
  scene.dimensions.map((dimension) => dimensionSvg(dimension, sheet)).join('');

/** Names of the sets under their axes. */
export const labelsSvg = (scene: Scene, { scale, origin }: Sheet): string =>
  scene.labels
    .map(
      ({ at, text }) =>
        `<text class="lb" x="${figure(origin[0] + scale * at[0])}" y="${figure(origin[1] + scale * at[1] + 16)}" text-anchor="middle">${escaped(text)}</text>`,
    )
    .join('');

const tone = (status: Status | null): string =>
  status === null || status === 'met' ? '' : ` t-${statusKeys[status]}`;

const end = ({ slot, line }: Callout): string => {
  const at = line[3];
  return slot.status === null || slot.status === 'met'
    ? `<circle class="dot" cx="${figure(at[0])}" cy="${figure(at[1])}" r="2.2"/>`
    : markSvg(slot.status, at, 0.86);
};

/** What a label has room for. */
const wordsOf = ({ slot, line }: Callout): { readonly name: string; readonly verdict: string } => {
  const width = Math.abs(line[1][0] - line[0][0]);
  return {
    name: shortened(slot.name, { width, font: 13 }),
    verdict:
      slot.status === null || slot.text === null
        ? ''
        : shortened(slot.text, { width: width - 19, font: 11.5 }),
  };
};

/** What is read aloud: the words that are seen, then the state and the full name where these are not among them. */
const spokenLabel = (callout: Callout): string => {
  const { slot, number } = callout;
  const { name, verdict } = wordsOf(callout);
  const told = [name, verdict, slot.status === verdict ? '' : (slot.status ?? '')].filter(
    (one) => one !== '',
  );
  const full = name === slot.name ? '' : `: ${slot.name}`;
  return `${String(number)} ${slot.title}: ${told.join(', ')}${full}`;
};

const balloonLabel = ({ slot, number }: Callout): string =>
  `${String(number)} ${slot.title}: ${slot.name}${slot.status === null ? '' : `, ${slot.status}`}`;

const labelBody = (callout: Callout): string => {
  const { slot, number, line } = callout;
  const [[outer, y], [inner]] = line;
  const x = Math.min(outer, inner);
  const words = wordsOf(callout);
  const verdict =
    slot.status === null || words.verdict === ''
      ? ''
      : `${markSvg(slot.status, [x + 7, y + 13], 0.82)}<text class="c3${tone(slot.status)}" x="${figure(x + 19)}" y="${figure(y + 17)}">${escaped(words.verdict)}</text>`;
  return [
    `<path class="lead${tone(slot.status)}" d="${points(line)}"/>`,
    end(callout),
    `<text class="c1" x="${figure(x)}" y="${figure(y - 22)}">${String(number)}\u2002${escaped(slot.title)}</text>`,
    `<text class="c2" x="${figure(x)}" y="${figure(y - 6)}">${escaped(words.name)}</text>`,
    verdict,
    // Words of one label stay apart where its text is read or copied.
  ].join('\n');
};

const balloonBody = (callout: Callout): string => {
  const { number, line, slot } = callout;
  const [[outer], [inner, y]] = line;
  const x = (outer + inner) / 2;
  return [
    `<path class="lead${tone(slot.status)}" d="${points(line.slice(1))}"/>`,
    end(callout),
    `<circle class="bal" cx="${figure(x)}" cy="${figure(y)}" r="9.5"/>`,
    `<text class="bt" x="${figure(x)}" y="${figure(y + 4)}" text-anchor="middle">${String(number)}</text>`,
  ].join('');
};

/** Numbered callouts, each a named link or group, in number order. */
export const calloutsSvg = (sheet: Sheet, { href, selected }: LinkOptions): string =>
  sheet.callouts
    .map((callout) => {
      const { slot } = callout;
      const inColumns = sheet.frame.callouts === 'columns';
      const label = escaped(inColumns ? spokenLabel(callout) : balloonLabel(callout));
      const body = inColumns ? labelBody(callout) : balloonBody(callout);
      const attributes = `class="call${selected === slot.path ? ' is-selected' : ''}" data-slot="${slot.path}" aria-label="${label}"`;
      return href === undefined
        ? `<g ${attributes}>${body}</g>`
        : `<a ${attributes} href="${escaped(href(slot.path))}">${body}</a>`;
    })
    .join('');
