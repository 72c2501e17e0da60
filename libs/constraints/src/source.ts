import type { SourceReference } from '@flangewise/model';

export const published = (citation: string): SourceReference => ({ citation, basis: 'published' });

export const commonPractice = (citation: string): SourceReference => ({ citation, basis: 'common practice' });

export const fromMemory = (citation: string): SourceReference => ({
  citation,
  basis: 'from memory, unverified',
});
