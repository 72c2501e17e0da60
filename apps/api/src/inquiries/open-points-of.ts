import { openSystem } from '@flangewise/constraints';
import type { InquiryInput, OpenPoint } from '@flangewise/model';
import type { Workshop } from '../workshop/workshop.js';

/** What an inquiry leaves open, before any part is chosen. */
export const openPointsOf = (workshop: Workshop, inquiry: InquiryInput): OpenPoint[] =>
  workshop.assess(openSystem(inquiry)).openPoints;
