/** Said on every sheet that somebody might take for a proof. */
export const usualCaution =
  'This document supports, and does not replace, the work of a qualified pressure-equipment engineer, the notified body and local rules.';
