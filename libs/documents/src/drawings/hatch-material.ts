import type { HatchMaterial } from './scene.js';

/** Which hatch a material gets; by the numbers of EN 10027-2 and by generic names. Unknown ones are drawn as steel. */
const rules: readonly (readonly [RegExp, HatchMaterial])[] = [
  [/glass/i, 'glass'],
  [/titan|zircon|tantal|niob|\b3\.7\d{3}\b/i, 'reactive'],
  [/alloy|nickel|\b2\.4\d{3}\b|\bN(?:0|1)\d{4}\b/i, 'nickel'],
  [/\bP(?:TFE|FA|EEK|P|VDF|C)\b|FEP|polymer|elastomer|polycarbonate/i, 'polymer'],
  [/alumin/i, 'aluminium'],
];

export const hatchMaterialOf = (material: string): HatchMaterial =>
  rules.find(([pattern]) => pattern.test(material))?.[1] ?? 'steel';
