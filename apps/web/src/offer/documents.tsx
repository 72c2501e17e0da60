import type { Outputs } from '../api/client';

type Documents = Outputs['offers']['get']['documents'];

const titles: Readonly<Record<string, string>> = {
  'offer.pdf': 'Offer, PDF',
  'specification.pdf': 'Technical specification, PDF',
  'bill-of-materials.xlsx': 'Bill of materials, XLSX',
  'bill-of-materials.csv': 'Bill of materials, CSV',
  'section.svg': 'Section, SVG',
  'cover.svg': 'Cover from above, SVG',
};

const order = Object.keys(titles);
const placeOf = (name: string): number => (order.includes(name) ? order.indexOf(name) : order.length);

const sizeText = (bytes: number): string =>
  bytes < 1000 ? `${String(bytes)} B` : `${String(Math.round(bytes / 1000))} kB`;

/** The files of an offer, to be saved. */
export function Documents({
  offerId,
  documents,
}: {
  readonly offerId: string;
  readonly documents: Documents;
}) {
  return (
    <ul>
      {documents
        .toSorted((a, b) => placeOf(a.name) - placeOf(b.name))
        .map(({ name, bytes }) => (
          <li key={name} className="row flex items-center justify-between gap-4 py-1.5">
            <a
              href={`/api/offers/${offerId}/documents/${name}`}
              download={name}
              className="py-1 text-given underline"
            >
              {titles[name] ?? name}
            </a>
            <span className="lab">{sizeText(bytes)}</span>
          </li>
        ))}
    </ul>
  );
}
