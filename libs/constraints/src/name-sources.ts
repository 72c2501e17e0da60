import { citationText, shortCitation, withSourceNames } from '@flangewise/engineering';
import type { Assessment } from '@flangewise/model';

/** An assessment for people: sources by name instead of key, short beside a check, in full beside a calculation. */
export const nameSources = (assessment: Assessment): Assessment => ({
  ...assessment,
  results: assessment.results.map((result) => ({
    ...result,
    source: result.source.map((one) => ({ ...one, citation: shortCitation(one.citation) })),
    evidence: result.evidence.map((evidence) => ({
      ...evidence,
      steps: evidence.steps.map((step) =>
        step.note === undefined ? step : { ...step, note: withSourceNames(step.note) },
      ),
      source: evidence.source.map((one) => ({ ...one, citation: citationText(one.citation) })),
    })),
  })),
  conformity: assessment.conformity.map((one) => ({
    ...one,
    source: one.source.map((reference) => ({ ...reference, citation: shortCitation(reference.citation) })),
  })),
});
