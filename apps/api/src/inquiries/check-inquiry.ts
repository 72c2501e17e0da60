import { type InputTrouble, inquirySchema, type InquiryInput, type OpenPoint } from '@flangewise/model';
import { troublesOf } from '../routers/as-typed.js';
import type { Workshop } from '../workshop/workshop.js';
import { openPointsOf } from './open-points-of.js';

export interface InquiryCheck {
  /** Fields that cannot be used as they stand. */
  readonly troubles: InputTrouble[];
  /** What is left open; known once there is no trouble. */
  readonly openPoints: OpenPoint[];
}

/** What keeps a document from being an inquiry, and what it leaves open. Saves nothing. */
export function checkInquiry(workshop: Workshop, document: unknown): InquiryCheck {
  const troubles = troublesOf(inquirySchema, document);
  return {
    troubles,
    openPoints: troubles.length > 0 ? [] : openPointsOf(workshop, document as InquiryInput),
  };
}
