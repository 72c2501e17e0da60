import { getEvidence as findEvidence } from '../../systems/get-evidence.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { getEvidenceInput, getEvidenceOutput } from './get-evidence.schema.js';

/** The assessment of a saved system with every step of its calculations. */
export const getEvidence = jobProcedure
  .input(getEvidenceInput)
  .output(getEvidenceOutput)
  .query(({ ctx, input }) => findEvidence(ctx, input.systemId));
