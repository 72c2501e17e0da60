import { known, notApplicable, reckon } from '../../figure.js';
import { handledMass, leastHandledMassKg } from '@flangewise/engineering';
import { comparison } from '../../rule.js';
import { published } from '../../source.js';

/** Off and on again, where nobody said how often. */
const usualLiftsPerDay = 2;

/** Steps in which masses are judged [kg]: above the first no limit of lifting by hand lies, and coarser ones will do. */
const heavyKg = 40;
const heavyStepKg = 20;

/** A mass as it is judged: rounded up to whole kilograms, as its limit is rounded down. */
const handledKg = (massKg: number): number =>
  massKg <= heavyKg ? Math.ceil(massKg) : Math.ceil(massKg / heavyStepKg) * heavyStepKg;

export const handMass = comparison({
  id: 'lifting.hand-mass',
  title: 'What is lifted by hand is light enough',
  group: 'lifting',
  kind: 'hard',
  unit: 'kg',
  utilisation: 'ratio',
  demandOf: { vessel: ['massKg'], cover: ['massKg'], coupling: ['massKg'] },
  limitOf: { lift: ['capacityKg'] },
  conditions: ['openingsPerDay'],
  rounded: { massKg: handledKg },
  // The coupling stays on the cover; what else hangs on it weighs little beside them, or is taken off.
  demand: ({ vessel, cover, coupling }) =>
    known(Math.min(handledKg(vessel.massKg), handledKg(cover.massKg) + handledKg(coupling.massKg))),
  limit: ({ lift }, { openingsPerDay }, proof) => {
    if (lift !== null) return notApplicable;
    const outcome = reckon(
      handledMass,
      { massKg: leastHandledMassKg, liftsPerDay: Math.max(usualLiftsPerDay, (openingsPerDay ?? 1) * 2) },
      proof,
    );
    return outcome.ok ? known(Math.floor(outcome.value.recommendedLimitKg)) : notApplicable;
  },
  say: ({ demand, limit, parts }) =>
    `Without a lift, ${demand} (the lighter of ${parts.vessel.name} and ${parts.cover.name} with ${parts.coupling.name}) are lifted by hand; ${limit} is recommended for one person.`,
  source: [published('ISO 11228-1:2021')],
});
