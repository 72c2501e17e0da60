import { accessoryCases } from './cases/accessories.js';
import { closureCases } from './cases/closure.js';
import { heatCases } from './cases/heat.js';
import { liftingCases } from './cases/lifting.js';
import { materialCases } from './cases/material.js';
import { paperCases } from './cases/papers.js';
import { protectionCases } from './cases/protection.js';
import { reliefCases } from './cases/relief.js';
import { stirringCases } from './cases/stirring.js';
import { strengthCases } from './cases/strength.js';
import { supplyCases } from './cases/supply.js';
import { volumeCases } from './cases/volume.js';
import { wishCases } from './cases/wish.js';
import type { CasesOf } from './rule-case.js';

/** What every rule says of chosen setups, by its id: the tests hold them, the rule book shows them. */
export const ruleCases: CasesOf = {
  ...volumeCases,
  ...strengthCases,
  ...closureCases,
  ...materialCases,
  ...liftingCases,
  ...stirringCases,
  ...heatCases,
  ...reliefCases,
  ...protectionCases,
  ...accessoryCases,
  ...supplyCases,
  ...wishCases,
  ...paperCases,
};
