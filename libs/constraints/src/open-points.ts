import type { OpenPoint, RuleResult, System } from '@flangewise/model';
import { formatQuantity, absoluteToGauge, gaugeToAbsolute } from '@flangewise/quantities';
import type { Conditions } from './conditions.js';
import { fieldInWords } from './field-in-words.js';
import { sentenceCase } from './sentence-case.js';
import { mainLiquid, vapourPressureAt } from './liquid.js';

/** A question that matters for what was said so far; asked only while the field is empty. */
interface Question {
  readonly field: string;
  readonly isOpen: (asked: Asked) => boolean;
  readonly question: (asked: Asked) => string;
  readonly why: (asked: Asked) => string;
}

interface Asked {
  readonly system: System;
  readonly conditions: Conditions;
}

/** Above this the liquid's own vapour makes a difference to the stated pressure. */
const noticeableVapourPaAbs = 1e5;
/** By less a stated pressure is the vapour pressure, rounded. */
const noticeablePa = 2e4;

const ownVapour = ({ conditions }: Asked): number | undefined => {
  const liquid = mainLiquid(conditions.media);
  return liquid === undefined || conditions.temperatureMaxK === undefined
    ? undefined
    : vapourPressureAt(liquid, conditions.temperatureMaxK);
};

const liquidName = ({ conditions }: Asked): string => mainLiquid(conditions.media)?.name ?? 'the liquid';

const isReaction = ({ system }: Asked): boolean => {
  const kind = system.inquiry.process.kind;
  return kind !== undefined && kind !== 'screening' && kind !== 'distillation' && kind !== 'crystallisation';
};

const hasGas = ({ conditions }: Asked): boolean => conditions.gases.length > 0;

const shownPressure = (paGauge: number, reference: 'gauge' | 'absolute'): string =>
  formatQuantity(paGauge, 'pressure', { reference, rounding: 'up' });

/** What the tables cannot judge; of a catalyst nothing is asked of them. */
const unknownMedia = ({ media }: Conditions): readonly string[] =>
  media.filter((m) => !m.isKnown && m.role !== 'catalyst').map((m) => m.name);

const questions: readonly Question[] = [
  {
    field: 'process.media',
    isOpen: ({ conditions }) => conditions.media.length === 0,
    question: () => 'Which media does the vessel hold, with concentration?',
    why: () =>
      'Corrosion of every wetted part, fluid group, vapour pressure, expansion and zone depend on it.',
  },
  {
    field: 'process.media',
    isOpen: ({ conditions }) => unknownMedia(conditions).length > 0,
    question: ({ conditions }) =>
      `Which substance exactly (CAS number, hazard classes, vapour pressure): ${unknownMedia(conditions).join(', ')}?`,
    why: () =>
      'The tables have no data for it; corrosion, ignition, fluid group and vapour pressure are not decidable without.',
  },
  {
    field: 'process.pressureMeans',
    isOpen: (asked) => {
      const vapour = ownVapour(asked);
      const { pressure, pressureMeans } = asked.system.inquiry.process;
      const stated =
        asked.system.inquiry.sets.some((s) => s.pressure?.highest !== undefined) ||
        pressure?.highest !== undefined;
      return (
        stated &&
        hasGas(asked) &&
        pressureMeans === undefined &&
        vapour !== undefined &&
        vapour > noticeableVapourPaAbs
      );
    },
    question: ({ conditions }) =>
      `Is ${shownPressure(conditions.pressureMaxPaGauge ?? 0, 'gauge')} the total pressure, or that of ${conditions.gases[0] ?? 'the gas'} alone?`,
    why: (asked) => {
      const vapour = ownVapour(asked) ?? 0;
      const stated = asked.conditions.pressureMaxPaGauge ?? 0;
      return `${liquidName(asked)} alone has about ${shownPressure(absoluteToGauge(vapour), 'absolute')} at the highest temperature; if the gas alone is meant, the total is ${shownPressure(stated + vapour, 'gauge')}, else the gas has only ${shownPressure(absoluteToGauge(gaugeToAbsolute(stated) - vapour), 'absolute')}. It was read as total.`;
    },
  },
  {
    field: 'sets.statedVolume',
    isOpen: ({ system }) =>
      system.inquiry.sets.some(
        (s) => s.statedVolume !== undefined && s.batchVolume === undefined && s.vesselVolume === undefined,
      ),
    question: () => 'Is the volume that of the batch or that of the vessel?',
    why: ({ conditions }) =>
      conditions.batchVolumeM3 === undefined
        ? 'With nothing but gas it was read as the vessel.'
        : 'It was read as the batch, which asks for the larger vessel.',
  },
  {
    field: 'sets.batchVolume',
    isOpen: ({ conditions }) => conditions.batchVolumeM3 === undefined,
    question: () => 'How much liquid is in the vessel, at which temperature is it filled?',
    why: () => 'The fill when hot, the stirring and the heat depend on it.',
  },
  {
    field: 'process.pressure.highest',
    isOpen: ({ system }) =>
      system.inquiry.process.pressure?.highest === undefined &&
      system.inquiry.sets.some((s) => s.pressure?.highest === undefined),
    question: () => 'What is the highest pressure, gauge or absolute, total or of the gas?',
    why: (asked) => {
      const vapour = ownVapour(asked);
      return vapour === undefined
        ? 'Nothing can be rated without it.'
        : `Only the vapour pressure of ${liquidName(asked)} was taken: at most about ${shownPressure(absoluteToGauge(vapour), 'absolute')} at the highest temperature.`;
    },
  },
  {
    field: 'process.pressure.highest',
    isOpen: (asked) => {
      const { statedPressurePaGauge, pressureMeans } = asked.conditions;
      return (
        statedPressurePaGauge !== undefined &&
        pressureMeans !== 'partial pressure of the gas' &&
        absoluteToGauge(ownVapour(asked) ?? 0) > statedPressurePaGauge + noticeablePa
      );
    },
    question: (asked) =>
      `Is ${shownPressure(asked.conditions.statedPressurePaGauge ?? 0, 'gauge')} right, or the highest temperature? ${liquidName(asked)} alone makes ${shownPressure(absoluteToGauge(ownVapour(asked) ?? 0), 'gauge')} there.`,
    why: () => 'The vapour pressure was taken for every check.',
  },
  {
    field: 'process.temperature.highest',
    isOpen: ({ conditions }) => conditions.temperatureMaxK === undefined,
    question: () => 'What are the lowest, the usual and the highest temperature?',
    why: () => 'Strength, seals, coupling, heat and corrosion are rated by it.',
  },
  {
    field: 'process.temperature.lowest',
    isOpen: ({ conditions }) =>
      conditions.temperatureMinK === undefined && conditions.temperatureMaxK !== undefined,
    question: () => 'What is the lowest temperature, and at which temperature is the vessel filled?',
    why: () => 'Filling at 20 °C was assumed; seals and cooling depend on the lowest temperature.',
  },
  {
    field: 'process.viscosity',
    isOpen: ({ conditions }) => conditions.viscosityMaxPaS === undefined && conditions.vesselsAtOnce === 1,
    question: () => 'What is the viscosity at the start and at the end, at temperature?',
    why: () => 'Stirrer, coupling and drive are chosen by it.',
  },
  {
    field: 'process.stirringSpeed',
    isOpen: ({ conditions }) => conditions.speedMaxPerS === undefined,
    question: () => 'At which speed is it stirred?',
    why: () =>
      'The torque depends on it; for each system the highest speed that its parts allow is given instead.',
  },
  {
    field: 'process.heatOfReaction',
    isOpen: (asked) => isReaction(asked) && asked.system.inquiry.process.heatOfReaction === undefined,
    question: () => 'How much heat does the reaction give, per mole of what?',
    why: () => 'The cooling duty and the adiabatic rise depend on it.',
  },
  {
    field: 'process.concentration',
    isOpen: (asked) => isReaction(asked) && asked.system.inquiry.process.concentration === undefined,
    question: () => 'What is the concentration of the reactant at the start?',
    why: () => 'Without it the gas uptake, the heat given in all and the adiabatic rise stay open.',
  },
  {
    field: 'process.peakUptake',
    isOpen: (asked) =>
      asked.system.inquiry.process.kind === 'hydrogenation' && asked.conditions.peakHeatW === undefined,
    question: () => 'What is the highest uptake of the gas?',
    why: () => 'The heat at its peak, the gas supply and the reservoir are sized by it.',
  },
  {
    field: 'process.calorimetry',
    isOpen: ({ conditions }) =>
      (conditions.exothermic === true || conditions.selfReactive === true) && conditions.calorimetry !== true,
    question: () => 'Are calorimetric data of the reaction and its decomposition at hand?',
    why: () =>
      'Relief is not decidable without them; areas for gas, fire and expansion are partial answers only.',
  },
  {
    field: 'process.regulatorKv',
    isOpen: (asked) => hasGas(asked) && asked.conditions.regulatorKv === undefined,
    question: ({ conditions }) =>
      `What is the flow coefficient Kv of the ${conditions.gases[0] ?? 'gas'} regulator, and its supply pressure?`,
    why: () => 'The relief area for a regulator failed open depends on it.',
  },
  {
    field: 'site.zone',
    isOpen: ({ conditions }) => conditions.zone === undefined,
    question: () => 'Does the system stand in a hazardous area, and in which zone?',
    why: () => 'Drive and every electrical part are chosen by it; none was assumed.',
  },
  {
    field: 'site.country',
    isOpen: ({ conditions }) => conditions.country === undefined,
    question: () => 'In which country will it stand?',
    why: () => 'The law that applies depends on it; the European Union was assumed.',
  },
  {
    field: 'commercial.endUse',
    isOpen: ({ system, conditions }) =>
      system.inquiry.commercial.endUse === undefined &&
      Math.max(conditions.vesselVolumeM3 ?? 0, conditions.hotVolumeM3 ?? 0, conditions.batchVolumeM3 ?? 0) >
        exportVolumeM3,
    question: () => 'What is the end use, and who is the end user?',
    why: () =>
      'Reactors above 100 L in corrosion-resistant materials can need an export licence (Regulation (EU) 2021/821, annex I, 2B350); to be checked against the text in force.',
  },
];

/** Regulation (EU) 2021/821, annex I, 2B350.a: vessels above 100 L. */
const exportVolumeM3 = 0.1;

/** Whether a value of this substance is missing: `ignition data of ethanol`, `vapour pressure of ethanol at 150 °C`. */
const isOf = (missing: string, name: string): boolean =>
  ['of', 'by', 'in'].some((word) => `${missing} at `.includes(` ${word} ${name} at `));

/** What nobody has said yet and what depends on it, each question once. */
export const openPointsOf = (
  system: System,
  conditions: readonly Conditions[],
  results: readonly RuleResult[],
): readonly OpenPoint[] => {
  const unknown = conditions.flatMap(unknownMedia);
  /** What is missing of a substance that is asked for is asked with it. */
  const askedAs = (field: string): string =>
    unknown.some((name) => isOf(field, name)) ? 'process.media' : field;
  const seen = new Set<string>();
  const asked = conditions.flatMap((own) =>
    questions.flatMap((q): OpenPoint[] => {
      const about = { system, conditions: own };
      if (!q.isOpen(about)) return [];
      const question = q.question(about);
      if (seen.has(question)) return [];
      seen.add(question);
      const rules = results
        .filter((r) => r.missing.some((field) => askedAs(field) === q.field))
        .map((r) => r.rule);
      return [{ field: q.field, question, why: sentenceCase(q.why(about)), rules: [...new Set(rules)] }];
    }),
  );
  const fields = new Set(asked.map((point) => point.field));
  const others = new Map<string, Map<string, string>>();
  for (const result of results) {
    if (result.status !== 'not decidable') continue;
    for (const field of result.missing) {
      if (fields.has(askedAs(field))) continue;
      others.set(field, (others.get(field) ?? new Map<string, string>()).set(result.rule, result.title));
    }
  }
  const rest = [...others].map(([field, rules]): OpenPoint => ({
    field,
    question: `To be found out: ${fieldInWords(field)}`,
    why: `Not decidable without it: ${[...rules.values()].map((title) => `“${title}”`).join(', ')}.`,
    rules: [...rules.keys()],
  }));
  return [...asked, ...rest];
};
