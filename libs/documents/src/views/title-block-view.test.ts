import { describe, expect, it } from 'vitest';
import { sampleOffer } from '../fixtures/sample-offer.js';
import type { Issue } from './issue.js';
import { titleBlockView } from './title-block-view.js';

const released = (releases: Issue['releases'], waits = false): readonly [string, string] => {
  const { system, offer, issue } = sampleOffer();
  const { watermark, ...open } = offer;
  const block = titleBlockView({
    system,
    offer: waits && watermark !== undefined ? { ...open, watermark } : open,
    issue: { ...issue, ...(releases === undefined ? {} : { releases }) },
    blocking: waits ? ['A special waits.'] : [],
  });
  return [block.released, block.releasedNote];
};

describe('the title block says what was released', () => {
  it('of a discount alone', () => {
    expect(released([{ what: 'discount', by: 'D. Example' }])).toEqual(['discount', 'by D. Example']);
  });

  it('of a special, and of a discount besides', () => {
    expect(
      released([
        { what: 'discount', by: 'D. Example' },
        { what: 'special', by: 'E. Example' },
        { what: 'special', by: 'E. Example' },
      ]),
    ).toEqual(['special, discount', 'by E. Example; by D. Example']);
  });

  it('and that nothing was, where nothing had to be or something waits', () => {
    expect(released(undefined)).toEqual(['not released', 'no release required']);
    expect(released([{ what: 'discount', by: 'D. Example' }], true)).toEqual([
      'not released',
      '1 point is open',
    ]);
  });
});
