import { materialGrade } from '@flangewise/engineering';
import { type MaterialVerdict, setName, statusRank, type System } from '@flangewise/model';
import type { Conditions } from './conditions.js';
import type { Range } from './range.js';
import { judgeMaterial } from './rules/material/corrosion.js';

/** Every material that can touch the product: those of the range, and one that was wished for. */
export const wettedMaterials = (system: System, range: Range): readonly string[] => {
  const wished = system.inquiry.sets.flatMap((set) => set.material ?? []);
  const offered = [...range.items.values()].flatMap((item) => item.wetted);
  const keys = [...wished, ...offered].map((name) => {
    const grade = materialGrade(name);
    return grade.ok ? grade.value.key : name;
  });
  return [...new Set(keys)];
};

/**
 * What each wetted material has to say about the media at the highest temperature, refused ones first. What holds for
 * some of several sets names them.
 */
export const materialVerdicts = (
  system: System,
  conditions: readonly Conditions[],
  range: Range,
): readonly MaterialVerdict[] => {
  const found = new Map<string, { readonly verdict: MaterialVerdict; readonly sets: string[] }>();
  for (const material of wettedMaterials(system, range)) {
    for (const [set, own] of conditions.entries()) {
      const judged = judgeMaterial(material, own);
      if (judged === undefined) continue;
      const verdict = { material, status: judged.status, text: judged.text ?? 'Suitable.' };
      const key = JSON.stringify(verdict);
      const known = found.get(key) ?? { verdict, sets: [] };
      known.sets.push(setName(system.sets[set]?.label, set));
      found.set(key, known);
    }
  }
  return [...found.values()]
    .map(({ verdict, sets }) =>
      sets.length === conditions.length
        ? verdict
        : { ...verdict, text: `For ${sets.join(', ')}: ${verdict.text}` },
    )
    .sort((a, b) => statusRank[a.status] - statusRank[b.status]);
};
