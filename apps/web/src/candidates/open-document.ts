import type { InquiryInput, SystemInput } from '@flangewise/model';

/** An inquiry as a system in which nothing is chosen yet. */
export const openDocument = (inquiry: InquiryInput): SystemInput => ({
  inquiry,
  sets: (inquiry.sets ?? [{}]).map(({ label, count }) => ({
    ...(label === undefined ? {} : { label }),
    count: count ?? 1,
    choices: {},
  })),
});
