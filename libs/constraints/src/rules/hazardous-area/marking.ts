import { gasGroupCovers, gasGroups } from '@flangewise/engineering';
import { slotNames } from '@flangewise/model';
import { met, notDecidable, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { published } from '../../source.js';

const temperatureClasses = ['T1', 'T2', 'T3', 'T4', 'T5', 'T6'];

const groupOf = (name: string) => gasGroups.find((g) => g === name) ?? 'IIC';

export const areaMarking = partRule({
  id: 'hazardous-area.marking',
  title: 'Electrical parts are marked for the zone',
  group: 'hazardous area',
  kind: 'hard',
  each: slotNames,
  reads: ['electrical'],
  beside: {},
  conditions: ['zone', 'marking'],
  judge: (part, { zone, marking }) => {
    if (zone === undefined || zone === 'none') return undefined;
    if (part.electrical === undefined || part.electrical.placement === 'outside the area') return undefined;
    const { protection } = part.electrical;
    if (protection === null)
      return notMet(`${part.name} has no protection marking and stands in zone ${zone}.`);
    const asked = Number(zone === '0' || zone === '20' ? 1 : zone === '1' || zone === '21' ? 2 : 3);
    const dust = zone.startsWith('2') && zone.length === 2;
    if (protection.category.endsWith('D') !== dust || Number(protection.category[0]) > asked) {
      return notMet(
        `${part.name} is of category ${protection.category}; zone ${zone} asks for ${String(asked)}${dust ? 'D' : 'G'}.`,
      );
    }
    if (marking === undefined) {
      return dust
        ? notDecidable(
            `${part.name}: its surface temperature depends on the ignition temperatures of cloud and layer of the dust, which are not known.`,
            'ignition temperatures of the dust',
          )
        : notDecidable(
            `${part.name}: gas group and temperature class depend on the substances, which are not known.`,
            'process.media',
          );
    }
    if (!gasGroupCovers(groupOf(protection.gasGroup), groupOf(marking.gasGroup))) {
      return notMet(`${part.name} is marked ${protection.gasGroup}; ${marking.gasGroup} is needed.`);
    }
    return temperatureClasses.indexOf(protection.temperatureClass) <
      temperatureClasses.indexOf(marking.temperatureClass)
      ? notMet(
          `${part.name} is marked ${protection.temperatureClass}; ${marking.from} asks for ${marking.temperatureClass}.`,
        )
      : met;
  },
  met: 'Category, gas group and temperature class of every electrical part suit the zone. Autoignition temperatures hold for air at 1 bar.',
  source: [published('1999/92/EC annex II B'), published('iec-60079-14'), published('iec-60079-20-1:2010')],
});
