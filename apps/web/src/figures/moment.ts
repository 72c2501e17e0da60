const two = (value: number): string => String(value).padStart(2, '0');
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** "14:03", local. */
export const timeText = (moment: Date): string => `${two(moment.getHours())}:${two(moment.getMinutes())}`;

/** "4 Nov 2026", local. */
export const dayText = (moment: Date): string =>
  `${String(moment.getDate())} ${months[moment.getMonth()] ?? ''} ${String(moment.getFullYear())}`;

/** The time of today, else the day. */
export const momentText = (moment: Date, now: Date): string =>
  moment.toDateString() === now.toDateString() ? timeText(moment) : dayText(moment);

/** A date as documents hold it, "2026-11-04", local. */
export const isoDay = (moment: Date): string =>
  `${String(moment.getFullYear())}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;

/** "2026-11-04" → "4 Nov 2026"; other text stays. */
export const isoDayText = (iso: string): string => {
  const match = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso);
  return match === null
    ? iso
    : `${String(Number(match[3]))} ${months[Number(match[2]) - 1] ?? ''} ${match[1] ?? ''}`;
};
