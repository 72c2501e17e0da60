/** What stands under everything that somebody might take for a proof. */
export const usualCaution = (what: string): string =>
  `${what} supports, and does not replace, the work of a qualified pressure-equipment engineer, the notified body and local rules.`;
