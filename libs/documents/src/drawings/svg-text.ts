const replacements: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text that is safe inside an element and inside a quoted attribute. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => replacements[sign] ?? sign);

/** Text cut to about a width, by the mean width of a letter. */
export const shortened = (text: string, size: { readonly width: number; readonly font: number }): string => {
  const room = Math.max(4, Math.floor(size.width / (size.font * 0.5)));
  return text.length <= room ? text : `${text.slice(0, room - 1).trimEnd()}…`;
};
