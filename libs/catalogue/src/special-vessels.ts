import data from './data/special-vessels.json' with { type: 'json' };

/** Materials of which specials are made. */
export const specialMaterials: readonly string[] = data.materials;

/** Working days until a special vessel can be shipped. */
export const specialLeadTimeDays: number = data.leadTimeDays;
export const specialCoverLeadTimeDays: number = data.coverLeadTimeDays;
export const specialShaftLeadTimeDays: number = data.shaftLeadTimeDays;
