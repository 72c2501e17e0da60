import type { Item } from '@flangewise/model';
import data from './data/items.json' with { type: 'json' };

/**
 * Every item of the demo range, in the order of the slots. The file holds items in full, defaults included; a test
 * holds it against the schema, so that nothing is parsed when the range is loaded.
 */
export const items: readonly Item[] = data;
