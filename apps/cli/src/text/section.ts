import { hanging } from './wrap.js';

/** A heading over its lines; nothing at all where there are none. */
export const section = (title: string, body: string): readonly string[] =>
  body === '' ? [] : [`${title}\n${body}`];

/** One indented paragraph a point. */
export const points = (texts: readonly string[], columns: number): string =>
  texts.map((text) => hanging('  - ', text, columns)).join('\n');

/** Sections with an empty line between them. */
export const page = (...sections: readonly (readonly string[])[]): string => sections.flat().join('\n\n');
