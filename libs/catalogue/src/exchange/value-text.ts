/** Signs of a given value that a report repeats. */
const mostSigns = 80;

/** What stands in a file, as a report repeats it. */
export const valueText = (value: unknown): string => {
  if (value === undefined || value === null || value === '') return 'nothing';
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > mostSigns ? `${text.slice(0, mostSigns)}…` : text;
};
