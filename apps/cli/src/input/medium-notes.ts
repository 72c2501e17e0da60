import { type Inquiry, nearestName } from '@flangewise/model';

/**
 * A note for every medium that no table knows, with the name that may have been meant. It is no trouble: the answer
 * asks for it as an open point, and what depends on it is not decidable.
 */
export const mediumNotes = async (media: Inquiry['process']['media']): Promise<readonly string[]> => {
  const tables = await import('@flangewise/engineering');
  const isKnown = (name: string): boolean =>
    tables.findFluid(name).ok || tables.mediumOf(name).ok || tables.findSubstanceHazards(name).ok;
  const unknown = media
    .map((medium, index) => ({ ...medium, index }))
    .filter(({ role, substance }) => role !== 'catalyst' && !isKnown(substance));
  if (unknown.length === 0) return [];
  const names = [
    ...tables.fluids.flatMap(({ name, aliases }) => [name, ...aliases]),
    ...tables.media.flatMap(({ key, aliases }) => [key, ...aliases]),
    ...tables.substanceHazards.flatMap(({ name, aliases }) => [name, ...aliases]),
  ];
  return unknown.map(({ substance, index }) => {
    const meant = nearestName(substance, names);
    const ask = meant === undefined ? 'give a common name or a CAS number.' : `was ${meant} meant?`;
    return `process.media[${String(index)}].substance: no table knows "${substance}"; ${ask} What depends on it is not decidable.`;
  });
};
