import {
  designStressAt,
  documents,
  findSubstanceHazards,
  type PedCategory,
  vesselAssessment,
} from '@flangewise/engineering';
import type { Conformity, ItemOf, System } from '@flangewise/model';
import { commonPractice, published } from './source.js';
import type { Chosen } from './chosen.js';
import type { Conditions } from './conditions.js';
import { assemblyConformity, jacketConformity } from './conformity-chambers.js';
import { isAmerican, isBritish } from './country.js';
import { reckon } from './figure.js';
import { shownQuantity } from './shown-quantity.js';

const testTemperatureK = 293.15;
/** ASME VIII-1 U-1(c)(2)(i): vessels of 6 in inside diameter or less are outside its scope. */
const asmeSmallestDiameterM = 0.152;

/** What the law wants to go with a vessel of a category, in one sentence. */
const papersOf = (category: PedCategory): string => {
  const list = reckon(documents, { category });
  if (!list.ok) return '';
  const names = list.value.documents.map(({ document }) => document);
  return names.length === 0 ? '' : ` Papers that go with it: ${names.join('; ')}.`;
};

type Vessel = Pick<
  ItemOf<'vessel'>,
  'name' | 'innerVolumeL' | 'rating' | 'material' | 'carrier' | 'geometry'
>;

const stressRatio = (vessel: Vessel, maxTemperatureK: number) => {
  const material = vessel.carrier ?? vessel.material;
  const cold = designStressAt(material, testTemperatureK);
  const hot = designStressAt(material, maxTemperatureK);
  return cold.ok && hot.ok
    ? { designStressAtTestPa: cold.value.stressPa, designStressAtMaxTemperaturePa: hot.value.stressPa }
    : {};
};

/** Substances that the tables class; where none is known the chamber is taken as holding a dangerous gas. */
const worstFluid = 'hydrogen';

const europe = (vessel: Vessel, conditions: Conditions, set: number): Conformity => {
  const substances = conditions.media.map((m) => m.cas ?? m.name);
  const known = substances.filter((substance) => findSubstanceHazards(substance).ok);
  const unknown = conditions.media
    .filter((m) => m.role !== 'catalyst' && !known.includes(m.cas ?? m.name))
    .map((m) => m.name);
  const maxTemperatureK = vessel.rating?.maxTemperatureK ?? testTemperatureK;
  const ps = (vessel.rating?.maxPressurePaGauge ?? 0) / 1e5;
  const outcome = reckon(vesselAssessment, {
    volumeL: vessel.innerVolumeL,
    maxPressureBarGauge: ps,
    maxTemperatureK,
    fluids: (known.length === 0 ? [worstFluid] : known).map((substance) => ({ substance })),
    ...stressRatio(vessel, maxTemperatureK),
  });
  const source = [published('2014/68/EU art. 4, art. 13, annex I 7.4, annex II')];
  if (!outcome.ok) {
    return {
      set,
      region: 'European Union',
      category: 'not decidable',
      statement: `${vessel.name}: ${outcome.error.message}`,
      modules: [],
      source,
    };
  }
  const r = outcome.value;
  const assumed =
    known.length === 0
      ? ' The media are not known: a gas of fluid group 1 was assumed, the strictest case.'
      : unknown.length === 0
        ? ''
        : ` Not on file and not counted: ${unknown.join(', ')}; its hazard classes can raise the fluid group.`;
  const marking = r.ceMarking
    ? `CE marking under the directive${r.notifiedBody ? ' with a notified body' : ''}`
    : 'no CE marking under the directive (sound engineering practice)';
  return {
    set,
    region: 'European Union',
    category: r.category,
    fluidGroup: r.fluidGroup,
    statement: `${vessel.name}: ${r.fluidState} of fluid group ${String(r.fluidGroup)}, ${r.table === 0 ? 'outside the tables' : `annex II table ${String(r.table)}`}, PS × V = ${ps.toPrecision(3)} bar × ${vessel.innerVolumeL.toPrecision(3)} L: ${r.category === 'Art4(3)' ? 'article 4(3)' : `category ${r.category}`}, ${marking}.${r.advice === '' ? '' : ` ${r.advice}.`}${assumed}${papersOf(r.category)}`,
    testPressurePaGauge: r.testPressureBarGauge * 1e5,
    modules: r.modules,
    source,
  };
};

const elsewhere = (vessel: Vessel, category: string, set: number): readonly Conformity[] => [
  {
    set,
    region: 'Great Britain',
    category,
    statement: `${vessel.name}: the Pressure Equipment (Safety) Regulations 2016 class it alike, with UKCA marking and an approved body; in use the Pressure Systems Safety Regulations 2000 ask for a written scheme of examination.`,
    modules: [],
    source: [published('UK SI 2016/1105'), published('UK SI 2000/128')],
  },
  {
    set,
    region: 'United States',
    category: 'ASME VIII-1',
    statement:
      vessel.geometry.innerDiameterM <= asmeSmallestDiameterM
        ? `${vessel.name} has an inside diameter of ${shownQuantity(vessel.geometry.innerDiameterM, 'm')}, not above 152 mm: outside the scope of ASME VIII-1, U-1(c); state law decides. This is a statement, not a certificate.`
        : `${vessel.name} falls into the scope of ASME VIII-1: design by the code, U stamp where the state asks for it, hazardous locations by the NEC with a listed laboratory. This is a statement, not a certificate.`,
    modules: [],
    source: [published('ASME VIII-1 U-1(c)'), commonPractice('state law and NEC')],
  },
];

/** The law that applies to each vessel, with the table used. The European answer always; the country decides the others. */
export const conformityOf = (
  system: System,
  conditions: readonly Conditions[],
  sets: readonly { readonly set: number; readonly chosen: Chosen }[],
): readonly Conformity[] => {
  const { country } = system.inquiry.site;
  const own = sets.flatMap(({ set, chosen }) => {
    const vessel = chosen('vessel');
    const asked = conditions[set];
    if (vessel?.slot !== 'vessel' || asked === undefined) return [];
    const eu = europe(vessel, asked, set);
    const others = elsewhere(vessel, eu.category, set).filter(
      (c) =>
        (c.region === 'Great Britain' && isBritish(country)) ||
        (c.region === 'United States' && isAmerican(country)),
    );
    return [eu, ...jacketConformity(vessel, set), ...others];
  });
  const discs = sets.flatMap(({ chosen }) => chosen('relief') ?? []);
  return [
    ...own,
    ...assemblyConformity(
      own.filter((c) => c.region === 'European Union'),
      discs,
    ),
  ];
};
