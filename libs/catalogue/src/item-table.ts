import type { Catalogue } from '@flangewise/model';

const columns = [
  'slot',
  'id',
  'name',
  'families',
  'massKg',
  'leadTimeDays',
  'wetted',
  'life',
  'attributes',
] as const;

/** A field of a CSV line: in quotation marks where it holds a separator, a mark or a line end (RFC 4180). */
const field = (value: string): string =>
  /[",\r\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value;

/**
 * The items of a catalogue as comma-separated text with a head line (RFC 4180), without prices. Attributes that
 * only some slots have stand in the last column as JSON.
 */
export const itemTable = ({ items }: Pick<Catalogue, 'items'>): string => {
  const lines = items.map(({ slot, id, name, families, massKg, leadTimeDays, wetted, life, ...attributes }) =>
    [
      slot,
      id,
      name,
      families.join(' '),
      String(massKg),
      String(leadTimeDays),
      wetted.join('; '),
      life,
      JSON.stringify(attributes),
    ]
      .map(field)
      .join(','),
  );
  return [columns.join(','), ...lines, ''].join('\r\n');
};
