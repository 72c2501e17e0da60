import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { fromMemory, published } from '../source-reference.js';
import { equipmentOfZone, zoneEquipmentFields, zones } from './zones.js';

/**
 * Equipment category and protection level that a zone asks for.
 *
 *   zone 0, 20 → 1 (a); zone 1, 21 → 2 (b); zone 2, 22 → 3 (c)
 *
 * @param zone 0, 1, 2 (gas), 20, 21, 22 (dust)
 * @returns category 1G to 3D and protectionLevel Ga to Dc, the lowest that the zone allows
 * @range equipment group II
 * @error CALC_INVALID_INPUT for an unknown zone
 * @source 1999/92/EC annex II B; 2014/34/EU annex I; protection level iec-60079-0
 */
export const equipmentCategory = calculation({
  id: 'hazardousArea.equipmentCategory',
  title: 'Equipment category for a zone',
  inputs: z.strictObject({ zone: z.enum(zones).meta({ description: 'Zone of the explosive atmosphere' }) }),
  outputs: z.strictObject(zoneEquipmentFields),
  formula: String.raw`0, 20 \to 1;\quad 1, 21 \to 2;\quad 2, 22 \to 3`,
  range: 'equipment group II, gas and dust',
  source: [
    published('1999/92/EC annex II B'),
    published('2014/34/EU annex I'),
    fromMemory('iec-60079-0 equipment protection levels'),
  ],
  compute: ({ zone }, log) => {
    const { category, protectionLevel } = equipmentOfZone(zone);
    log?.({
      symbol: 'category',
      formula: 'least category of the zone',
      substituted: `zone ${zone}`,
      value: `${category} (${protectionLevel})`,
      unit: '1',
    });
    return succeed({ category, protectionLevel });
  },
});
