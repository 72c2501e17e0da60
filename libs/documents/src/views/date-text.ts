const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A calendar date as documents show it: `2026-11-24` → "24 Nov 2026". Other text stays as it is. */
export const dateText = (iso: string): string => {
  const match = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso);
  const month = months[Number(match?.[2]) - 1];
  return match === null || month === undefined
    ? iso
    : `${String(Number(match[3]))} ${month} ${match[1] ?? ''}`;
};
