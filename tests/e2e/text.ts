/** A text with ordinary spaces: figures are shown with narrow ones that never break. */
export const plain = (text: string): string => text.replaceAll('\u2060', '').replaceAll(/\s+/g, ' ').trim();

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Matches a text on the page, whatever spaces stand in it. */
export const spaced = (text: string): RegExp =>
  new RegExp(text.split(' ').map(escaped).join('[\\s\\u2060]+'));

const grouped = (whole: string): string => whole.replaceAll(/\B(?=(\d{3})+(?!\d))/g, ' ');

/** An amount of an offer as a page shows it: "69185.00" → "69 185.00 €". */
export const amount = (decimal: string): string => {
  const [whole = '', cents = ''] = decimal.split('.');
  return `${grouped(whole)}.${cents} €`;
};

/** A price among others, to one euro: "69185.00" → "69 185 €". */
export const wholeAmount = (decimal: string): string => `${grouped(String(Math.round(Number(decimal))))} €`;
