import { materialGrade } from '@flangewise/engineering';
import { type MaterialVerdict, statusRank, type System } from '@flangewise/model';
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

/** What each wetted material has to say about the media at the highest temperature, refused ones first. */
export const materialVerdicts = (
  system: System,
  conditions: Conditions,
  range: Range,
): readonly MaterialVerdict[] =>
  wettedMaterials(system, range)
    .flatMap((material): MaterialVerdict[] => {
      const verdict = judgeMaterial(material, conditions);
      return verdict === undefined
        ? []
        : [{ material, status: verdict.status, text: verdict.text ?? 'Suitable.' }];
    })
    .sort((a, b) => statusRank[a.status] - statusRank[b.status]);
