import { router } from '../../trpc/procedures.js';
import { checkInquiry } from './check-inquiry.js';
import { createInquiry } from './create-inquiry.js';
import { getInquiry } from './get-inquiry.js';
import { listInquiries } from './list-inquiries.js';
import { updateInquiry } from './update-inquiry.js';

export const inquiriesRouter = router({
  list: listInquiries,
  get: getInquiry,
  create: createInquiry,
  update: updateInquiry,
  check: checkInquiry,
});
