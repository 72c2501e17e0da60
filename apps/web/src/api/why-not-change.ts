import type { InquiryRecord } from './use-inquiry';
import type { Me } from './use-me';

/** Why a person may not change an inquiry and its systems; undefined for those who may. */
export function whyNotChange({ role }: Me, { mayChange, owner }: InquiryRecord): string | undefined {
  if (mayChange) return undefined;
  if (role !== 'customer') return 'Applications engineers change inquiries and save systems.';
  const engineer = owner ?? 'An applications engineer';
  return `${engineer} has taken this inquiry up and makes the changes from now on. Write to ${engineer} if something should be different.`;
}
