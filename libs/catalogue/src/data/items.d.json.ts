import type { Item } from '@flangewise/model';

/** Typed here, so that the compiler need not read the file. */
declare const items: readonly Item[];
export default items;
