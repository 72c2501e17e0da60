import type { Inputs } from '../api/client';

export type FileFormat = Inputs['catalogue']['importFile']['format'];

/** Formats in which a revision goes out and comes in, by the end of the file's name. */
export const fileFormats: Readonly<Record<FileFormat, { readonly title: string; readonly says: string }>> = {
  xlsx: { title: 'XLSX workbook', says: 'a sheet for each slot and one of prices, for spreadsheets' },
  csv: { title: 'CSV table', says: 'every item in one table, for spreadsheets and programs' },
  json: { title: 'JSON document', says: 'everything, terms of price lists and house rules too' },
};

export const formatNames = Object.keys(fileFormats) as readonly FileFormat[];

export const formatOf = ({ name }: File): FileFormat | undefined =>
  formatNames.find((format) => name.toLowerCase().endsWith(`.${format}`));

/** The content of a file as text of base 64 (RFC 4648 §4). */
export const base64Of = (file: File): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^data:[^,]*,/, ''));
    reader.onerror = () => reject(new Error(`“${file.name}” cannot be read. Choose it again.`));
    reader.readAsDataURL(file);
  });
