import { router } from '../../trpc/procedures.js';
import { auditProgress } from './audit-progress.js';
import { auditRevision } from './audit-revision.js';
import { checkDraft } from './check-draft.js';
import { compareRevisions } from './compare-revisions.js';
import { discardDraft } from './discard-draft.js';
import { getCatalogue } from './get-catalogue.js';
import { getRevision } from './get-revision.js';
import { importFile } from './import-file.js';
import { listChanges } from './list-changes.js';
import { listRevisions } from './list-revisions.js';
import { openDraft } from './open-draft.js';
import { releaseDraft } from './release-draft.js';
import { removeItem } from './remove-item.js';
import { saveItem } from './save-item.js';
import { savePriceList } from './save-price-list.js';

export const catalogueRouter = router({
  get: getCatalogue,
  listRevisions,
  getRevision,
  listChanges,
  openDraft,
  saveItem,
  removeItem,
  savePriceList,
  importFile,
  compare: compareRevisions,
  audit: auditRevision,
  auditProgress,
  checkDraft,
  release: releaseDraft,
  discardDraft,
});
