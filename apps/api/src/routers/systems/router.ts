import { router } from '../../trpc/procedures.js';
import { assessSystem } from './assess-system.js';
import { createSystem } from './create-system.js';
import { explainSystem } from './explain-system.js';
import { freezeSystem } from './freeze-system.js';
import { getSystem } from './get-system.js';
import { getSystemRevision } from './get-system-revision.js';
import { narrowSystem } from './narrow-system.js';
import { saveSystem } from './save-system.js';
import { solveInquiry } from './solve-inquiry.js';

export const systemsRouter = router({
  solve: solveInquiry,
  create: createSystem,
  get: getSystem,
  getRevision: getSystemRevision,
  save: saveSystem,
  freeze: freezeSystem,
  assess: assessSystem,
  narrow: narrowSystem,
  explain: explainSystem,
});
