import { usualCaution } from '@flangewise/model';

/** Said on every sheet that somebody might take for a proof. */
export const sheetCaution = usualCaution('This document');
