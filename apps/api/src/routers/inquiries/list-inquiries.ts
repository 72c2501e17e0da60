import { findInquiries } from '../../inquiries/find-inquiries.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { listInquiriesOutput } from './list-inquiries.schema.js';

export const listInquiries = jobProcedure.output(listInquiriesOutput).query(({ ctx }) => findInquiries(ctx));
