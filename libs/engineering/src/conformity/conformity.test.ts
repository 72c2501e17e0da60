import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { pedCategories } from '../ped/annex-ii-vessels.js';
import { assembly } from '../ped/assembly.js';
import { directives } from './directives.js';
import { documents, documentWishes } from './documents.js';
import { greatBritain } from './great-britain.js';
import { unitedStates } from './united-states.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

const category = fc.constantFrom(...pedCategories);

describe('ped.assembly', () => {
  const equipment = [
    { name: 'vessel', category: 'III' as const },
    { name: 'jacket', category: 'I' as const },
  ];

  it('is assessed by its highest equipment, safety accessories left out: article 14(6)(b)', () => {
    const whole = valueOf(evaluate(assembly, { equipment, safetyAccessories: [{ name: 'disc' }] }));
    expect(whole).toMatchObject({
      category: 'III',
      decidedBy: 'vessel',
      notifiedBody: true,
      ceMarking: true,
    });
    expect(whole.accessories[0]).toMatchObject({ name: 'disc', category: 'IV' });
    expect(whole.modules).toContain('H');
    expect(whole.statement).toContain('text in force');
  });

  it('classes an accessory made for one item as that item: annex II point 2', () => {
    const whole = valueOf(
      evaluate(assembly, {
        equipment,
        safetyAccessories: [
          { name: 'disc', madeFor: 'vessel' },
          { name: 'jacket valve', madeFor: 'jacket' },
        ],
      }),
    );
    expect(whole.accessories.map((own) => own.category)).toEqual(['III', 'I']);
  });

  it('names an accessory made for nothing in the list', () => {
    expect(
      evaluate(assembly, { equipment, safetyAccessories: [{ name: 'disc', madeFor: 'boiler' }] }),
    ).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'safetyAccessories.0.madeFor' },
    });
  });

  it('never falls with a further item, in any order', () => {
    const items = fc.array(
      category.map((own) => ({ name: own, category: own })),
      { minLength: 1, maxLength: 8 },
    );
    const rank = (some: { name: string; category: (typeof pedCategories)[number] }[]) =>
      pedCategories.indexOf(valueOf(evaluate(assembly, { equipment: some })).category);
    fc.assert(
      fc.property(items, items, (some, more) => {
        expect(rank([...some, ...more])).toBe(Math.max(rank(some), rank(more)));
        expect(rank([...some].reverse())).toBe(rank(some));
      }),
    );
  });

  it('shows what sets it', () => {
    const evidence = evaluateWithEvidence(assembly, { equipment, safetyAccessories: [{ name: 'disc' }] });
    expect(evidence.ok && evidence.value.steps[0]?.note).toBe('set by vessel');
    expect(evidence.ok && evidence.value.steps).toHaveLength(2);
  });
});

describe('conformity.unitedStates', () => {
  const state = (change: object) =>
    valueOf(
      evaluate(unitedStates, { innerDiameterM: 0.3, maxPressurePaGauge: 20e5, volumeL: 30, ...change }),
    );

  it.each([
    // U-1(c)(2)(i): not exceeding 6 in, no limit on length or pressure; (h): not exceeding 15 psi.
    ['152 mm', { innerDiameterM: 0.152, maxPressurePaGauge: 300e5 }, false],
    ['152.1 mm', { innerDiameterM: 0.1521 }, true],
    ['15 psi', { maxPressurePaGauge: 103_421 }, false],
    ['15.1 psi', { maxPressurePaGauge: 104_111 }, true],
  ])('at %s', (_words, change, inScope) => {
    expect(state(change).inScope).toBe(inScope);
  });

  it.each([
    // U-1(j): 1.5 ft³ (42.5 L) and 600 psi (41.4 bar); 3 ft³ and 350 psi; 5 ft³ and 250 psi.
    [{ volumeL: 42, maxPressurePaGauge: 41e5 }, true],
    [{ volumeL: 43, maxPressurePaGauge: 41e5 }, false],
    [{ volumeL: 84, maxPressurePaGauge: 24e5 }, true],
    [{ volumeL: 141, maxPressurePaGauge: 17e5 }, true],
    [{ volumeL: 142, maxPressurePaGauge: 17e5 }, false],
    [{ volumeL: 42, maxPressurePaGauge: 42e5 }, false],
    [{ volumeL: 42, maxPressurePaGauge: 41e5, quickActuatingClosure: true }, false],
    [{ innerDiameterM: 0.1, volumeL: 1 }, false],
  ])('counts %o as a small vessel: %s', (change, small) => {
    expect(state(change).smallVessel).toBe(small);
  });

  it('asks for the stamp, the relief, the lock and additions where they belong', () => {
    expect(state({}).demands.join(' ')).toContain('UG-125');
    expect(state({ quickActuatingClosure: true }).demands.join(' ')).toContain('UG-35.2');
    expect(state({ maxPressurePaGauge: 210e5 }).demands.join(' ')).toContain('3000 psi');
    expect(state({ maxPressurePaGauge: 200e5 }).demands.join(' ')).not.toContain('3000 psi');
    expect(state({ hazardousLocation: true }).demands.join(' ')).toContain('division');
    expect(state({ innerDiameterM: 0.1 }).demands.join(' ')).toContain('No mark by the code');
  });

  it('is a statement and not a certificate', () => {
    for (const innerDiameterM of [0.1, 0.3]) {
      expect(state({ innerDiameterM }).statement).toMatch(/not a certificate.*text in force/u);
    }
  });
});

describe('conformity.greatBritain', () => {
  const law = (change: object) =>
    valueOf(
      evaluate(greatBritain, {
        category: 'III',
        maxPressureBarGauge: 10,
        volumeL: 25,
        contents: 'gas',
        ...change,
      }),
    );

  it.each([
    // Written scheme from 250 bar litres; steam without a threshold; liquids that do not boil are not relevant fluids.
    [{}, true],
    [{ volumeL: 24.9 }, false],
    [{ volumeL: 24.9, contents: 'steam' }, true],
    [{ volumeL: 1000, contents: 'liquid' }, false],
    [{ maxPressureBarGauge: 0.5, volumeL: 1000 }, false],
    [{ maxPressureBarGauge: 0.51, volumeL: 1000 }, true],
  ])('needs a written scheme with %o: %s', (change, needed) => {
    const result = law(change);
    expect(result.writtenScheme).toBe(needed);
    expect(result.demands.some((demand) => demand.startsWith('Written scheme'))).toBe(needed);
  });

  it('marks as the directive does, with an approved body where that asks for one', () => {
    expect(law({}).marking).toContain('UKCA marking with an approved body');
    expect(law({ category: 'I' })).toMatchObject({ approvedBody: false });
    expect(law({ category: 'I' }).marking).not.toContain('approved body');
    expect(law({ category: 'Art4(3)' }).marking).toContain('no marking');
    expect(law({}).statement).toContain('text in force');
  });
});

describe('conformity.directives', () => {
  const acts = (change: object) => {
    const { laws, statement } = valueOf(
      evaluate(directives, {
        placedOnMarket: '2026-11-01',
        pressureCategory: 'III',
        poweredMotion: true,
        electrical: true,
        alternatingVoltageV: 400,
        ...change,
      }),
    );
    return { statement, of: (part: string) => laws.find(({ law }) => law.includes(part))! };
  };

  it.each([
    ['2027-01-19', '2006/42/EC'],
    ['2027-01-20', '2023/1230'],
    ['2026-01-01', '2006/42/EC'],
    ['2030-06-30', '2023/1230'],
  ])('takes machinery law of the day: %s %s', (placedOnMarket, number) => {
    expect(acts({ placedOnMarket }).of('Machinery').law).toContain(number);
    expect(acts({ placedOnMarket }).of('Machinery').applies).toBe(true);
  });

  it('keeps low voltage to its voltages, and gives it up to machinery and explosion law', () => {
    const still = { poweredMotion: false };
    expect(acts({ ...still, alternatingVoltageV: 50 }).of('2014/35').applies).toBe(true);
    expect(acts({ ...still, alternatingVoltageV: 49 }).of('2014/35').applies).toBe(false);
    expect(acts({ ...still, alternatingVoltageV: 1001 }).of('2014/35').applies).toBe(false);
    expect(acts({ ...still, alternatingVoltageV: undefined, directVoltageV: 75 }).of('2014/35').applies).toBe(
      true,
    );
    expect(
      acts({ ...still, alternatingVoltageV: undefined, directVoltageV: 1501 }).of('2014/35').applies,
    ).toBe(false);
    expect(acts({ ...still, zone: '1' }).of('2014/35').applies).toBe(false);
    expect(acts({}).of('2014/35').applies).toBe(false);
  });

  it('leaves category I to the other acts, and nothing above it', () => {
    expect(acts({ pressureCategory: 'I' }).of('2014/68').applies).toBe(false);
    expect(acts({ pressureCategory: 'II' }).of('2014/68').applies).toBe(true);
    const alone = { poweredMotion: false, electrical: false, alternatingVoltageV: undefined };
    expect(acts({ ...alone, pressureCategory: 'I' }).of('2014/68').applies).toBe(true);
    expect(acts({ ...alone, pressureCategory: 'out of scope' }).of('2014/68').applies).toBe(false);
    expect(acts({ ...alone, pressureCategory: 'out of scope' }).statement).toContain('None of these acts');
    expect(acts({ pressureCategory: 'Art4(3)' }).of('2014/68').reason).toContain(
      'sound engineering practice',
    );
  });

  it('takes explosion law in a zone, and compatibility with electrical parts', () => {
    expect(acts({ zone: '2' }).of('2014/34').applies).toBe(true);
    expect(acts({}).of('2014/34').applies).toBe(false);
    expect(acts({}).of('2014/30').applies).toBe(true);
    expect(acts({ electrical: false }).of('2014/30').applies).toBe(false);
  });

  it('refuses a text that is no date', () => {
    expect(
      evaluate(directives, {
        placedOnMarket: '20 January 2027',
        pressureCategory: 'I',
        poweredMotion: true,
        electrical: true,
      }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_INVALID_INPUT', field: 'placedOnMarket' } });
  });
});

describe('conformity.documents', () => {
  const papers = (
    inputs: Parameters<typeof evaluate<typeof documents.inputs, typeof documents.outputs>>[1],
  ) => valueOf(evaluate(documents, inputs)).documents;

  it('asks for more with every category', () => {
    expect(pedCategories.map((own) => papers({ category: own }).length)).toEqual([0, 1, 3, 6, 7, 7]);
  });

  it('adds each wish once, and explosion protection', () => {
    const wished = papers({
      category: 'I',
      wishes: ['material certificates', 'material certificates', 'calibration'],
      hazardousArea: true,
    });
    expect(wished).toHaveLength(6);
    expect(wished.map(({ demandedBy }) => demandedBy)).toContain('wish: calibration');
    expect(wished.map(({ demandedBy }) => demandedBy)).toContain('2014/34/EU art. 13');
  });

  it('has a paper for every wish', () => {
    for (const wish of documentWishes)
      expect(papers({ category: 'out of scope', wishes: [wish] })).toHaveLength(1);
  });

  it('says for each paper who asks for it', () => {
    for (const own of pedCategories) {
      for (const { demandedBy } of papers({ category: own })) expect(demandedBy).toContain('2014/68/EU');
    }
  });
});
