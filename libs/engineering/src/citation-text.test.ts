import { describe, expect, it } from 'vitest';
import { citationText, shortCitation, withSourceNames } from './citation-text.js';
import { sources } from './sources.js';

describe('a citation for people', () => {
  it.each([
    [
      'kern-1950 ch. 18',
      'Kern, D. Q.: Process Heat Transfer, McGraw-Hill, 1950, ch. 18',
      'Kern 1950, ch. 18',
    ],
    [
      'en-13445-3:2021 §6, §7',
      'EN 13445-3:2021, Unfired pressure vessels, part 3: Design, §6, §7',
      'EN 13445-3:2021 §6, §7',
    ],
    [
      '2014/68/EU annex I 2.1',
      'Directive 2014/68/EU on pressure equipment (PED), annex I 2.1',
      'Directive 2014/68/EU annex I 2.1',
    ],
    ['dalton', "Dalton's law of partial pressures", "Dalton's law of partial pressures"],
  ])('%s', (citation, full, short) => {
    expect(citationText(citation)).toBe(full);
    expect(shortCitation(citation)).toBe(short);
  });

  it('tells two sources in one citation apart', () => {
    expect(shortCitation('lehrer-1970, stein-schmidt-1993')).toBe('Lehrer 1970; Stein 1993');
  });

  it('names sources that stand by key in other words', () => {
    expect(withSourceNames('ethanol, vdi-heat-atlas part D3; perry-8 table 2-32 gives 824 kg/m3')).toBe(
      'ethanol, VDI Heat Atlas part D3; Green 2008 table 2-32 gives 824 kg/m3',
    );
    expect(withSourceNames('non-metallic, half-open, n-hexane')).toBe('non-metallic, half-open, n-hexane');
  });

  it('leaves words as they are', () => {
    for (const words of [
      'EN 1595',
      'no contact of stirrer and coil',
      'corrosion rows, each with its own source',
    ])
      expect([citationText(words), shortCitation(words)]).toEqual([words, words]);
  });

  it('shows no key of any source', () => {
    const bare = /[a-z]+-[a-z0-9-]*\d|-practice|-method/u;
    for (const key of [...sources.keys()].filter((one) => /^[a-z0-9:.-]+$/u.test(one))) {
      expect(citationText(key)).not.toBe(key);
      expect(shortCitation(key)).not.toMatch(bare);
      expect(shortCitation(key).length).toBeLessThan(110);
    }
  });
});
