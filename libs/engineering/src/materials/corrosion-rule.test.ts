import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { compatibility, compatibilityOf } from './compatibility.js';
import { type CorrosionRule, type CorrosionState, ruleApplies } from './corrosion-rule.js';

const rule = (change: Partial<CorrosionRule>): CorrosionRule => ({
  materials: ['metal'],
  media: ['*'],
  verdict: 'caution',
  text: 'a row',
  source: 'this test',
  basis: 'published',
  ...change,
});

const applies = (row: Partial<CorrosionRule>, state: Partial<CorrosionState> = {}) =>
  ruleApplies(rule(row), { temperatureC: 20, moist: false, ...state });

describe('a row of the corrosion table', () => {
  it.each([
    // The ends: `from` and `to` belong to the row, `above` and `below` do not.
    [{ from: 50 }, [49.9, 50, 50.1], ['no', 'yes', 'yes']],
    [{ above: 50 }, [49.9, 50, 50.1], ['no', 'no', 'yes']],
    [{ to: 50 }, [49.9, 50, 50.1], ['yes', 'yes', 'no']],
    [{ below: 50 }, [49.9, 50, 50.1], ['yes', 'no', 'no']],
    [{ from: 40, below: 50 }, [39, 45, 50], ['no', 'yes', 'no']],
  ])('holds within %o', (bound, values, expected) => {
    expect(
      values.map((temperatureC) => applies({ when: { temperatureC: bound } }, { temperatureC })),
    ).toEqual(expected);
    expect(values.map((massPercent) => applies({ when: { massPercent: bound } }, { massPercent }))).toEqual(
      expected,
    );
  });

  it('is not moved off a limit by the rounding from kelvin', () => {
    expect(applies({ when: { temperatureC: { to: 80 } } }, { temperatureC: 353.15 - 273.15 + 1e-9 })).toBe(
      'yes',
    );
    expect(applies({ when: { temperatureC: { to: 80 } } }, { temperatureC: 80.00001 })).toBe('no');
  });

  it('names every field that it asks and nobody stated', () => {
    const when = { massPercent: { from: 5 }, pressureBar: { above: 1 } };
    expect(applies({ when })).toEqual(['massPercent', 'pressureBar']);
    expect(applies({ when }, { massPercent: 6 })).toEqual(['pressureBar']);
    expect(applies({ when }, { massPercent: 6, pressureBar: 2 })).toBe('yes');
    // One condition that fails settles it, whatever else is open.
    expect(applies({ when }, { massPercent: 4 })).toBe('no');
    expect(applies({ when, onlyIfStated: true })).toBe('no');
    expect(applies({ when, onlyIfStated: true }, { massPercent: 6, pressureBar: 2 })).toBe('yes');
  });

  it('takes moist for as much water as it asks, and for more than any upper bound', () => {
    expect(applies({ when: { waterPercent: { from: 1 } } }, { moist: true })).toBe('yes');
    expect(applies({ when: { waterPercent: { to: 1 } } }, { moist: true })).toBe('no');
    expect(applies({ when: { waterPercent: { below: 1 } } }, { moist: true })).toBe('no');
    // A figure goes before the word, and the word is about water alone.
    expect(applies({ when: { waterPercent: { from: 1 } } }, { moist: true, waterPercent: 0.5 })).toBe('no');
    expect(applies({ when: { massPercent: { from: 1 } } }, { moist: true })).toEqual(['massPercent']);
  });

  it('climbs down in steps: 25 °C up to 5 %, 10 °C up to 20 %, nothing beyond', () => {
    const limits: [number, number][] = [
      [5, 25],
      [20, 10],
    ];
    const steps = (side: 'within' | 'beyond') => ({ steps: { field: 'massPercent' as const, limits, side } });
    const at = (massPercent: number, temperatureC: number) => [
      applies(steps('within'), { massPercent, temperatureC }),
      applies(steps('beyond'), { massPercent, temperatureC }),
    ];
    expect(at(5, 25)).toEqual(['yes', 'no']);
    expect(at(5, 25.1)).toEqual(['no', 'yes']);
    expect(at(5.1, 25)).toEqual(['no', 'yes']);
    expect(at(20, 10)).toEqual(['yes', 'no']);
    expect(at(20.1, -40)).toEqual(['no', 'yes']);
    expect(applies(steps('within'))).toEqual(['massPercent']);
  });
});

describe('the verdict', () => {
  const verdictOf = (
    given: Omit<Parameters<typeof compatibilityOf>[0], 'temperatureK'> & { celsius: number },
  ) => {
    const { celsius, ...rest } = given;
    const found = compatibilityOf({ ...rest, temperatureK: celsius + 273.15 });
    if (!found.ok) throw new Error(found.error.message);
    return found.value;
  };

  it('is that of the worst row, which stands first', () => {
    const { reasons, verdict } = verdictOf({
      material: '316L',
      medium: 'acetic acid',
      celsius: 100,
      chlorideMgPerL: 500,
    });
    expect(verdict).toBe('caution');
    const rank = reasons.map((reason) => ['suitable', 'caution', 'forbidden'].indexOf(reason.verdict));
    expect(rank).toEqual([...rank].sort((a, b) => b - a));
    expect(rank.length).toBeGreaterThan(1);
  });

  it('names what could make it worse, and nothing once it is forbidden', () => {
    const open = verdictOf({ material: 'Zr 702', medium: 'methanol', celsius: 60 });
    expect(open.reasons[0]?.text).toMatch(/^share of water and share of strong acid not given: methanol/u);
    expect(open.missingInputs.length).toBeGreaterThan(0);
    expect(new Set(open.missingInputs).size).toBe(open.missingInputs.length);
    expect(
      verdictOf({ material: '316L', medium: 'chlorides', celsius: 80, chlorideMgPerL: 201 }),
    ).toMatchObject({
      verdict: 'forbidden',
      missingInputs: [],
    });
  });

  it('takes dry and moist from the words of the user and from the name', () => {
    const titanium = (medium: string, rest: object) =>
      compatibilityOf({ material: 'Ti Gr 2', medium, temperatureK: 293.15, ...rest });
    const verdicts = (
      [
        ['chlorine', { dry: true }],
        ['chlorine', { moist: false }],
        ['chlorine', { moist: true }],
        ['chlorine', { dry: false }],
        ['chlorine, dry', { moist: true }],
      ] as const
    ).map(([medium, rest]) => {
      const found = titanium(medium, rest);
      return found.ok ? found.value.verdict : found.error.code;
    });
    expect(verdicts).toEqual(['forbidden', 'forbidden', 'suitable', 'suitable', 'forbidden']);
  });

  it.each([
    // Supplier's O-ring tables: PTFE −200 to 260 °C, 300 °C for short; a hundredth of a kelvin belongs to the limit.
    [260, 'suitable', undefined],
    [260.005, 'suitable', undefined],
    [261, 'caution', 'PTFE stands 260 °C lasting, 300 °C for short'],
    [300, 'forbidden', 'PTFE is not for service at 300 °C and above'],
    [-200.005, 'suitable', undefined],
    [-201, 'forbidden', 'PTFE is not for service below -200 °C'],
  ] as const)('of PTFE in nitrogen at %d °C is %s', (celsius, verdict, text) => {
    const found = verdictOf({ material: 'PTFE', medium: 'nitrogen', celsius, pressureBar: 1 });
    expect(found.verdict).toBe(verdict);
    if (text !== undefined) expect(found.reasons[0]?.text).toBe(text);
  });

  it('says what it lacks: the input that decides, or the pair', () => {
    expect(compatibilityOf({ material: 'Ti Gr 2', medium: 'methanol', temperatureK: 298.15 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_MISSING_PROPERTY', field: 'waterPercent' },
    });
    const pair = compatibilityOf({ material: 'HNBR', medium: 'phosgene', temperatureK: 300 });
    expect(pair).toMatchObject({ ok: false, error: { code: 'CALC_MISSING_PROPERTY', field: 'medium' } });
    expect(!pair.ok && pair.error.message).toContain('no corrosion row is on file for HNBR in phosgene');
  });

  it('is shown with every row, its source and what it is worth', () => {
    const given = { material: 'Zr 702', medium: 'methanol', temperatureK: 333.15 };
    const plain = evaluate(compatibility, given);
    const evidence = evaluateWithEvidence(compatibility, given);
    if (!plain.ok || !evidence.ok) throw new Error('no verdict');
    const { steps } = evidence.value;
    const inside = compatibilityOf(given);
    expect(steps).toHaveLength(inside.ok ? inside.value.reasons.length : 0);
    expect(steps[0]).toMatchObject({ formula: plain.value.reason, value: plain.value.verdict });
    for (const { note, substituted } of steps) {
      expect(['published', 'common practice', 'from memory, unverified']).toContain(note);
      expect(substituted.length).toBeGreaterThan(0);
    }
  });
});
