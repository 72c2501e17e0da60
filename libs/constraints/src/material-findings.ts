import type { System } from '@flangewise/model';
import type { ConditionMedium, Conditions } from './conditions.js';
import { wettedMaterials } from './material-verdicts.js';
import type { Range } from './range.js';
import { judgeMaterial } from './rules/material/corrosion.js';

const isRefused = (material: string, conditions: Conditions): boolean =>
  judgeMaterial(material, conditions)?.status === 'not met';

const listed = (materials: readonly string[]): string =>
  materials.length === 0 ? 'nothing' : materials.join(', ');

/** Whether one medium is dry, where that decides about a material: what each case excludes. */
const moistureFinding = (
  medium: ConditionMedium,
  materials: readonly string[],
  conditions: Conditions,
): string | undefined => {
  const excluded = (dry: boolean): readonly string[] =>
    materials.filter((m) => isRefused(m, { ...conditions, media: [{ ...medium, dry }] }));
  const whenDry = excluded(true);
  const whenMoist = excluded(false);
  if (whenDry.join() === whenMoist.join()) return undefined;
  const only = (these: readonly string[], those: readonly string[]): string =>
    listed(these.filter((m) => !those.includes(m)));
  const said =
    medium.dry === undefined
      ? 'it was not said; the worse counts for each material'
      : `it was said to be ${medium.dry ? 'dry' : 'moist'}; that has to be assured in operation, start and cleaning included`;
  return `Whether ${medium.name} is dry decides: dry it excludes ${only(whenDry, whenMoist)}, moist it excludes ${only(whenMoist, whenDry)}; ${said}.`;
};

const wishFinding = (material: string, conditions: Conditions): string | undefined => {
  const verdict = judgeMaterial(material, conditions);
  return verdict?.status === 'not met'
    ? `${material} was wished for and is refused: ${verdict.text ?? ''} That holds for every part that the product or its vapour touches: disc, springs and seats of valves, probes and fittings too.`
    : undefined;
};

/** What the media say about materials before a part is chosen: wishes refused, dryness that decides, metal kept away. */
export const materialFindings = (
  system: System,
  conditions: readonly Conditions[],
  range: Range,
): readonly string[] => {
  const materials = wettedMaterials(system, range);
  const found = conditions.flatMap((own) => [
    own.material === undefined ? undefined : wishFinding(own.material, own),
    ...own.media.map((medium) => moistureFinding(medium, materials, own)),
    own.noMetalContact === true
      ? 'No metal may touch the product: that holds for the whole wetted path, disc, probes, dip tube, coupling and valves included. Tantalum is a metal too.'
      : undefined,
  ]);
  return [...new Set(found.filter((text) => text !== undefined))];
};
