import { z } from 'zod';

/** Zones of explosive atmospheres: 0, 1, 2 for gas and vapour, 20, 21, 22 for dust. */
export const zones = ['0', '1', '2', '20', '21', '22'] as const;
export type Zone = (typeof zones)[number];

export const gasZones = ['0', '1', '2'] as const;
export type GasZone = (typeof gasZones)[number];

/** What a zone asks of equipment. */
export const zoneEquipmentFields = {
  category: z
    .string()
    .meta({ description: 'Lowest equipment category that the zone allows, with G for gas and D for dust' }),
  protectionLevel: z.string().meta({ description: 'Equipment protection level, Ga to Dc' }),
};

export type ZoneEquipment = Readonly<z.output<z.ZodObject<typeof zoneEquipmentFields>>>;

const equipment: Readonly<Record<Zone, ZoneEquipment>> = {
  '0': { category: '1G', protectionLevel: 'Ga' },
  '1': { category: '2G', protectionLevel: 'Gb' },
  '2': { category: '3G', protectionLevel: 'Gc' },
  '20': { category: '1D', protectionLevel: 'Da' },
  '21': { category: '2D', protectionLevel: 'Db' },
  '22': { category: '3D', protectionLevel: 'Dc' },
};

/** @source 1999/92/EC annex II B with 2014/34/EU; protection levels iec-60079-0 (from memory, unverified) */
export const equipmentOfZone = (zone: Zone): ZoneEquipment => equipment[zone];

/** Whether equipment of a category may be used where another is asked: 1G serves for 2G, never 2G for 2D. */
export const categoryCovers = (marked: string, required: string): boolean =>
  marked.slice(1) === required.slice(1) && Number(marked[0]) <= Number(required[0]);
