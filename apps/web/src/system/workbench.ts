import type { Assessment, NarrowAnswer, SlotPath, SystemInput } from '@flangewise/model';
import type { EngineClient } from '../engine/engine-client';
import type { Commercial } from '../engine/protocol';

/** What every part of the workspace works with: the document, what the engine says of it, and how it is changed. */
export interface Workbench {
  readonly document: SystemInput;
  readonly client: EngineClient;
  readonly assessment: Assessment | undefined;
  readonly narrowed: NarrowAnswer | undefined;
  readonly commercial: Commercial | undefined;
  /** Whether what the engine said is about this document, and not about the one before. */
  readonly isCurrent: boolean;
  /** Undefined for those who see no prices. */
  readonly currency: string | undefined;
  /** Number of each chosen slot in the drawing. */
  readonly numbers: ReadonlyMap<SlotPath, number>;
  readonly change: (document: SystemInput) => void;
  readonly nameOf: (id: string | null | undefined) => string;
}
