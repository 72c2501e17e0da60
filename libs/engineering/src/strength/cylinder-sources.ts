import { fromMemory, published } from '../source-reference.js';

export const cylinderSources = [
  published('en-13445-3:2021 §7.4.2'),
  published('timoshenko-strength-2 §11'),
  published('asme-viii-1 UG-27(c)(1), appendix 1-1, 1-2'),
  published('ad-2000-b1 eq. 2'),
  fromMemory('ad-2000-b10'),
] as const;

export const cylinderRange =
  'EN 13445-3: e/De ≤ 0.16, above it Lamé with P < f z; ASME VIII-1: P ≤ 3 S E; AD 2000: Da/Di ≤ 1.5 (tubes to 200 mm: 1.7)';
