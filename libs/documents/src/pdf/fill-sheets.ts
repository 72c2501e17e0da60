/** Lines that a text takes where about so many letters go on one. */
export const linesOf = (text: string, letters: number): number =>
  Math.max(1, Math.ceil(text.length / letters));

interface Room {
  /** Height that is left for rows on the first and on further sheets. */
  readonly first: number;
  readonly next: number;
}

/**
 * Rows shared out to sheets by their estimated heights. An estimate that is too low does no harm, since a full sheet
 * goes on to another; sharing out first spares the layout from measuring all that follows for every sheet.
 */
export const fillSheets = <T>(rows: readonly T[], heightOf: (row: T) => number, room: Room): T[][] => {
  const sheets: T[][] = [[]];
  let used = 0;
  for (const row of rows) {
    const height = heightOf(row);
    const free = sheets.length === 1 ? room.first : room.next;
    if (used > 0 && used + height > free) {
      sheets.push([]);
      used = 0;
    }
    sheets.at(-1)?.push(row);
    used += height;
  }
  return sheets;
};
