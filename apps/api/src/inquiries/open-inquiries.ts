import { InquiryState, type Prisma } from '../generated/client.js';

/** Inquiries that wait for an answer or for the client's word: what the maker sells matters to them. */
export const openInquiries = {
  state: { in: [InquiryState.open, InquiryState.offered] },
} as const satisfies Prisma.InquiryWhereInput;
