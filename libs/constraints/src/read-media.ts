import { findFluid, findSubstanceHazards, mediumOf } from '@flangewise/engineering';
import type { Medium } from '@flangewise/model';
import type { ConditionMedium } from './conditions.js';

/** Resolves what somebody named against the tables; a name that they do not know is kept as it is. */
export const readMedium = (medium: Medium): ConditionMedium => {
  const fluid = findFluid(medium.substance);
  return {
    name: fluid.ok ? fluid.value.name : medium.substance,
    role: medium.role,
    isKnown: fluid.ok || mediumOf(medium.substance).ok || findSubstanceHazards(medium.substance).ok,
    ...(fluid.ok ? { cas: fluid.value.cas } : {}),
    ...(medium.massFraction === undefined ? {} : { massFraction: medium.massFraction }),
    ...(medium.dry === undefined ? {} : { dry: medium.dry }),
  };
};
