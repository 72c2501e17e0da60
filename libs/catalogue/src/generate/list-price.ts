/** A list price: whole, to 5 below 10 000, to 50 above. */
export const listPrice = (amount: number): number => {
  const step = amount < 10_000 ? 5 : 50;
  return Math.max(step, Math.round(amount / step) * step);
};
