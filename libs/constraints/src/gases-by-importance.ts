import type { Conditions } from './conditions.js';

/** Gases by name, those of the process before those that only make the atmosphere inert. */
export const gasesByImportance = ({
  gases,
  media,
}: Pick<Conditions, 'gases' | 'media'>): readonly string[] => {
  const inert = new Set(media.filter((m) => m.role === 'inert gas').map((m) => m.name));
  return [...gases.filter((gas) => !inert.has(gas)), ...gases.filter((gas) => inert.has(gas))];
};
