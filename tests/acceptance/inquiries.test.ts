import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ExplainAnswer, NarrowAnswer, OfferAnswer, SolveAnswer, SystemInput } from '@flangewise/model';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { run, runJson } from '../../apps/cli/src/testing/run.js';
import { ask, type Asked, asksFor, materialOf, resultsOf, says } from './ask.js';
import { inquiryNames, pathOf, readExample } from './examples.js';

/** Answers are asked once; every test reads them. */
const asked = new Map<string, Asked>();

beforeAll(async () => {
  for (const name of inquiryNames) asked.set(name, await ask(name));
}, 600_000);

const answerTo = (name: string): Asked => asked.get(name)!;

const choiceOf = (system: SystemInput | undefined, slot: string, set = 0): string | null | undefined => {
  const frame = system?.frame as Readonly<Record<string, string | null>> | undefined;
  const choices = system?.sets?.[set]?.choices as Readonly<Record<string, string | null>> | undefined;
  return choices?.[slot] ?? frame?.[slot];
};

/** Names of everything that the first system is made of. */
const partsOf = async (answer: Asked): Promise<readonly string[]> => {
  const { items } = (await import('@flangewise/catalogue')).demoCatalogue;
  const chosen = [answer.system?.frame, ...(answer.system?.sets ?? []).map((set) => set.choices)].flatMap(
    (choices) => Object.values(choices ?? {}),
  );
  return items.filter((item) => chosen.includes(item.id)).map((item) => item.name);
};

/** The figure of the first sentence that fits, for instance litres after "become". */
const figureIn = ({ sentences }: Asked, pattern: RegExp): number =>
  Number(sentences.map((s) => pattern.exec(s)?.[1]).find((f) => f !== undefined));

describe('every inquiry', () => {
  it.each(inquiryNames)('%s: systems that were verified, or the conflict and what mends it', (name) => {
    const { solve, exit, check, explain } = answerTo(name);
    expect(exit).toBe(solve.result === 'systems found' ? 0 : 1);
    if (solve.result === 'systems found') {
      expect(check?.undecided).toEqual([]);
      expect(check?.results.filter((r) => r.kind === 'hard' && r.status === 'not met')).toEqual([]);
    } else {
      expect(solve.result).toBe('impossible');
      expect(explain?.conflicts.length).toBeGreaterThan(0);
      expect(explain?.repairs.length).toBeGreaterThan(0);
    }
  });
});

describe('answers in words', () => {
  it.each([
    ['solve', pathOf('inquiries', '06-high-pressure.json')],
    ['solve', pathOf('inquiries', '09-caustic-soda.json')],
    ['explain', pathOf('inquiries', '07-glass-16-bar.json')],
    ['check', pathOf('systems', '01-hydrogenation-broken.json')],
    ['check', pathOf('systems', '08-glass-and-steel.json')],
    ['narrow', pathOf('systems', '08-glass-and-steel.json')],
    ['explain', pathOf('systems', '08-glass-and-steel.json')],
  ])('%s %s stay within the lines of a terminal and show no inner values', async (command, path) => {
    const { out } = await run([command, path]);
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100);
    expect(out).not.toMatch(/undefined|NaN|\[object|\bnull\b|\u2060/);
  });
});

describe('a special vessel', () => {
  it('is priced by the rates of the list: in the ranking, and the same on the offer', async () => {
    const { answer } = await runJson(['solve', pathOf('inquiries', '06-high-pressure.json')]);
    const [candidate] = (answer as SolveAnswer).candidates;
    const folder = await mkdtemp(join(tmpdir(), 'flangewise-special-'));
    onTestFinished(() => rm(folder, { recursive: true }));
    const offered = await runJson(['offer', '-', '--out', join(folder, 'offer')], candidate?.system);
    expect((offered.answer as OfferAnswer).total).toBe(candidate?.price);
    const bill = await readFile(join(folder, 'offer', 'bill-of-materials.csv'), 'utf8');
    expect(bill).toContain('Special vessel 2 L, 1.4404, PS 500');
    const { priceLists } = pricedDemoCatalogue;
    const listed = Object.values(candidate?.system.sets?.[0]?.choices ?? {})
      .concat(Object.values(candidate?.system.frame ?? {}))
      .reduce((sum, id) => sum + Number(priceLists[0]?.prices[id ?? ''] ?? 0), 0);
    expect(Number(candidate?.price) - listed).toBeGreaterThan(priceLists[0]?.specialRates?.engineering ?? 0);
  });
});

describe('a part that does not fit', () => {
  it('is explained by the rule that it fails, not by a conflict far away', async () => {
    const system = readExample('systems', '01-hydrogenation.json') as SystemInput;
    const sets = system.sets?.map((set) => ({ ...set, choices: { ...set.choices, closure: 'CL-1001' } }));
    const { answer } = await runJson(['explain', '-'], { ...system, sets });
    const [conflict] = (answer as ExplainAnswer).conflicts;
    expect(conflict?.statements.map(({ path }) => path)).toEqual(['sets[0].closure']);
    expect(conflict?.rules.map(({ text }) => text).join()).toMatch(/made for bore 20; .* has bore 130/);
  });
});

describe('1, hydrogenation', () => {
  const answer = (): Asked => answerTo('01-hydrogenation');

  it('asks whether 60 bar is the total pressure or that of hydrogen; methanol alone has about 14 bar', () => {
    expect(asksFor(answer(), 'process.pressureMeans')).toBe(true);
    expect(says(answer(), /60 bar\(g\) the total pressure, or that of hydrogen/)).toBe(true);
    expect(says(answer(), /Methanol alone has about 1[34](\.\d+)? bar\(a\)/)).toBe(true);
  });

  it('finds that 1.5 L become about 1.85 L', () => {
    expect(figureIn(answer(), /^1\.5 L of methanol .* become ([\d.]+) L/)).toBeCloseTo(1.85, 1);
  });

  it('asks for IIC, and for T2 because of methanol', () => {
    expect(says(answer(), /gas group IIC, temperature class T2 \(methanol decides/)).toBe(true);
  });

  it('refuses titanium, takes zirconium with caution, warns of rapid decompression of elastomers', () => {
    expect(materialOf(answer(), 'titanium grade 2')?.status).toBe('not met');
    expect(materialOf(answer(), 'zirconium 702')?.text).toMatch(/cracks zirconium|hydrogen pick-up/);
    for (const elastomer of ['FKM', 'EPDM'])
      expect(materialOf(answer(), elastomer)?.text).toMatch(/rapid release of pressure/);
  });

  it('closes quickly, with interlock and lift', () => {
    expect(answer().solve.candidates.every((c) => c.title.includes('quick-acting'))).toBe(true);
    expect(resultsOf(answer(), 'closure.interlock').map((r) => r.status)).toEqual(['met']);
    expect(choiceOf(answer().system, 'lift')).toMatch(/^LF-/);
    expect(resultsOf(answer(), 'lifting.closure-needs-lift').map((r) => r.status)).toEqual(['met']);
  });

  it('asks for inerting', () => {
    expect(says(answer(), /^Inert with nitrogen before hydrogen/)).toBe(true);
  });

  it('leaves uptake and heat open without the concentration', () => {
    expect(asksFor(answer(), 'process.concentration')).toBe(true);
    expect(asksFor(answer(), 'process.peakUptake')).toBe(true);
    expect(says(answer(), /uptake.*heat/)).toBe(true);
  });

  it('does not decide relief without calorimetry, and shows partial areas', () => {
    expect(resultsOf(answer(), 'relief.runaway').map((r) => r.status)).toEqual(['not decidable']);
    expect(answer().check?.blocking.some((b) => b.startsWith('Relief of a runaway'))).toBe(true);
    expect(says(answerTo('01-hydrogenation-completed'), /fire/i, /mm²/)).toBe(true);
  });

  it('says nothing of the total pressure once it was said', () => {
    expect(asksFor(answerTo('01-hydrogenation-completed'), 'process.pressureMeans')).toBe(false);
  });
});

describe('2, hydrochloric acid without metal', () => {
  const answer = (): Asked => answerTo('02-hydrochloric-acid');

  it('counts disc, probes, dip tube and coupling as wetted, and tantalum as a metal', async () => {
    expect(says(answer(), /disc, probes, dip tube, coupling/, /Tantalum is a metal/)).toBe(true);
    expect(resultsOf(answer(), 'material.no-metal').map((r) => r.status)).toEqual(['met']);
    const slots = resultsOf(answer(), 'material.no-metal').flatMap((r) => r.slots);
    for (const slot of ['relief', 'temperatureProbe', 'coupling']) expect(slots).toContain(`sets[0].${slot}`);
    expect((await partsOf(answer())).filter((name) => /tantalum|1\.4|alloy|titanium/.test(name))).toEqual([]);
  });

  it('takes glass behind a shield', () => {
    expect(answer().solve.candidates[0]?.title).toContain('borosilicate glass');
    expect(choiceOf(answer().system, 'shield')).toMatch(/^SD-/);
    expect(
      resultsOf(answer(), 'protection.shield')
        .map((r) => r.status)
        .join(),
    ).toMatch(/^met/);
  });

  it('warns that the published figures of glass end near 100 °C', () => {
    const glass = materialOf(answer(), 'borosilicate glass 3.3');
    expect(glass?.status).toBe('met with caution');
    expect(glass?.text).toMatch(/published figures end near 100 °C/);
  });

  it('asks for the fluid group of the vapour', () => {
    expect(says(answer(), /hydrogen chloride/, /group 1 or 2/)).toBe(true);
  });
});

describe('3, polymerisation', () => {
  const answer = (): Asked => answerTo('03-polymerisation');

  it('asks for medium and speed', () => {
    expect(asksFor(answer(), 'process.media')).toBe(true);
    expect(asksFor(answer(), 'process.stirringSpeed')).toBe(true);
  });

  it('gives the highest speed of every system at the end viscosity', () => {
    for (const candidate of answer().solve.candidates)
      expect(candidate.notes?.join(' ')).toMatch(
        /At 60.000.*mPa·s .* may turn at .*1\/min at most, limited by/,
      );
  });

  it('offers nothing that could not turn the batch at any speed', async () => {
    const { items } = (await import('@flangewise/catalogue')).demoCatalogue;
    for (const { system, notes } of answer().solve.candidates) {
      const most = Number(/may turn at ([\d.]+)\s1\/min at most/.exec(notes?.join(' ') ?? '')?.[1]);
      const drive = items.find((i) => i.id === choiceOf(system, 'drive'));
      expect(drive?.slot === 'drive' ? 60 * drive.minSpeedPerS : Infinity).toBeLessThanOrEqual(most);
    }
  });

  it('reckons a double ribbon of 0.19 m at 60 1/min with about 20 N·m', async () => {
    const { answer: torque } = await runJson(['calc', 'stirring.impellerTorque', '--input', '-'], {
      impeller: 'double helical ribbon',
      impellerDiameterM: 0.19,
      vesselDiameterM: 0.2,
      densityKgPerM3: 1000,
      viscosityPaS: 60,
      speedPerS: 1,
    });
    const { outputs } = torque as { outputs: Readonly<Record<string, number>> };
    const torques = Object.entries(outputs).filter(([field]) => /torqueNm$/i.test(field));
    expect(torques.length).toBeGreaterThan(0);
    for (const [, value] of torques) {
      expect(value).toBeGreaterThan(10);
      expect(value).toBeLessThan(40);
    }
  });

  it('empties through a flush bottom valve, with what the clearance leaves', async () => {
    expect(choiceOf(answer().system, 'bottomValve')).toMatch(/^BV-/);
    expect((await partsOf(answer())).some((name) => /flush/i.test(name))).toBe(true);
    expect(says(answer(), /clear/i, /wall|bottom/i)).toBe(true);
    expect(says(answer(), /empt/i)).toBe(true);
  });

  it('does not decide relief without data', () => {
    expect(resultsOf(answer(), 'relief.runaway').map((r) => r.status)).toEqual(['not decidable']);
  });
});

describe('4, screening', () => {
  const answer = (): Asked => answerTo('04-screening');

  it('runs six at once and adds up loads and gas', () => {
    expect(says(answer(), /^6 vessels work at once/, /load/, /gas/)).toBe(true);
    expect(resultsOf(answer(), 'supply.frame-sets')[0]?.demand).toBe(6);
    expect(answer().system?.sets?.[0]?.count).toBe(6);
  });

  it('puts each vessel below the categories: no CE mark under the directive', () => {
    expect(says(answer(), /article 4\(3\)/, /no CE marking/)).toBe(true);
    expect(new Set(answer().check?.conformity.map((c) => c.category))).toEqual(new Set(['Art4(3)']));
  });
});

describe('5, pilot batch of toluene', () => {
  const answer = (): Asked => answerTo('05-pilot-toluene');

  it('names the papers that the category asks for', () => {
    expect(says(answer(), /category IV.*Specific inspection certificates.*notified body/)).toBe(true);
  });

  it('finds that 250 L become about 310 L and ask for a vessel of about 365 L', () => {
    expect(figureIn(answer(), /^250 L of toluene .* become ([\d.]+) L/)).toBeCloseTo(310, -1);
    const needed = figureIn(answer(), /a vessel of at least ([\d.]+) L/);
    expect(needed).toBeGreaterThan(355);
    expect(needed).toBeLessThan(375);
    expect(answer().solve.candidates.every((c) => !/Fell (30|50|100|200|300) L/.test(c.title))).toBe(true);
  });

  it('classes it as category IV', () => {
    expect(answer().check?.conformity[0]?.category).toBe('IV');
  });

  it('takes vacuum and jacket pressure together, and a disc that stands vacuum', async () => {
    const [outside] = resultsOf(answer(), 'strength.vacuum-and-jacket');
    expect(outside?.text).toMatch(/Jacket pressure and full vacuum together/);
    expect(resultsOf(answer(), 'relief.vacuum-support').map((r) => r.status)).toEqual(['met']);
    expect((await partsOf(answer())).some((name) => /disc.*vacuum support/i.test(name))).toBe(true);
  });

  it('asks for IIA and T1, and for earthing', () => {
    expect(says(answer(), /category 2G, gas group IIA, temperature class T1/)).toBe(true);
    expect(says(answer(), /^Earth /)).toBe(true);
  });

  it('says how it is opened below 3.2 m', () => {
    expect(resultsOf(answer(), 'lifting.headroom')[0]?.text).toMatch(/lowered|lifted/);
    expect(resultsOf(answer(), 'lifting.headroom')[0]?.text).toMatch(/3200 mm/);
  });

  it('asks for the end use', () => {
    expect(asksFor(answer(), 'commercial.endUse')).toBe(true);
    expect(asksFor(answerTo('05-pilot-toluene-completed'), 'commercial.endUse')).toBe(false);
  });
});

describe('6, hydrogen at 400 bar', () => {
  const answer = (): Asked => answerTo('06-high-pressure');

  it('answers with a special: thick wall, mass, price, delivery', () => {
    const [candidate] = answer().solve.candidates;
    expect(candidate?.special).toBe(true);
    expect(candidate?.notes?.join(' ')).toMatch(/wall [\d.]+.*mm by the thick wall method/);
    expect(candidate?.notes?.join(' ')).toMatch(/mass [\d.]+.*kg/);
    expect(Number(candidate?.price)).toBeGreaterThan(0);
    expect(candidate?.deliveryWeeks).toBeGreaterThan(0);
  });

  it('classes it by its own PS and volume', () => {
    expect(says(answer(), /PS × V = \d+ bar × 2\.00 L/)).toBe(true);
  });

  it('takes a seal of graphite or metal and a cooled coupling', async () => {
    const parts = await partsOf(answer());
    expect(parts.some((name) => /graphite gasket|metal .*ring/i.test(name))).toBe(true);
    expect(parts.some((name) => /coupling.*cooled/i.test(name))).toBe(true);
  });

  it('is not released', () => {
    expect(answer().check?.releasable).toBe(false);
    expect(answer().check?.blocking.some((b) => /special.*released/i.test(b))).toBe(true);
  });
});

describe('7, glass for 16 bar', () => {
  const answer = (): Asked => answerTo('07-glass-16-bar');

  it('is impossible because glass and 16 bar exclude each other, and because of nothing else', () => {
    expect(answer().solve.result).toBe('impossible');
    expect(answer().explain?.conflicts.map((c) => c.statements.map((s) => s.path).sort())).toEqual([
      ['process.pressure.highest', 'sets[0].construction'],
    ]);
  });

  it('is mended by lined steel at 16 bar, or by glass at a lower pressure that is named', () => {
    const repairs = answer().explain?.repairs ?? [];
    expect(repairs.some((r) => /without “glass vessel”: .*lined/.test(r.text))).toBe(true);
    const lower = repairs.find((r) => r.changes[0]?.path === 'process.pressure.highest');
    expect(lower?.text).toMatch(/glass/);
    const bar = Number(/^([\d.]+)/.exec(lower?.changes[0]?.to ?? '')?.[1]);
    expect(bar).toBeGreaterThan(1);
    expect(bar).toBeLessThan(12);
  });
});

describe('8, glass and steel on one frame', () => {
  const answer = (): Asked => answerTo('08-glass-and-steel');
  const completed = (): Asked => answerTo('08-glass-and-steel-completed');

  it('gives each set a disc, a gauge and a gas limit of its own', () => {
    for (const slot of ['relief', 'pressureGauge']) {
      expect(choiceOf(completed().system, slot, 0)).not.toBe(choiceOf(completed().system, slot, 1));
      expect(choiceOf(answer().system, slot, 0)).not.toBe(choiceOf(answer().system, slot, 1));
    }
    expect(choiceOf(completed().system, 'gasLimit', 0)).toMatch(/^GL-/);
  });

  it('keeps the supply for 100 bar from the glass', () => {
    expect(says(answer(), /supply for 100 bar\(g\) is kept from the set for 6 bar\(g\)/)).toBe(true);
    const [glass] = resultsOf(completed(), 'relief.gas-limit');
    expect(glass?.status).toBe('met');
    expect(glass?.text).toMatch(/lets through at most \d+ bar\(g\).*PS \d+ bar\(g\) of .*glass/);
  });

  it('takes a seal that holds both ends: neither FKM nor FFKM', async () => {
    const { answer: narrowed } = await runJson(['narrow', pathOf('inquiries', '08-glass-and-steel.json')]);
    const { items } = (await import('@flangewise/catalogue')).demoCatalogue;
    const { slots } = narrowed as NarrowAnswer;
    for (const set of [0, 1]) {
      const valid = slots[`sets[${String(set)}].seal`]?.valid ?? [];
      const materials = items.flatMap((i) => (i.slot === 'seal' && valid.includes(i.id) ? [i.material] : []));
      expect(materials.length).toBeGreaterThan(0);
      expect(materials.filter((m) => m === 'FKM' || m === 'FFKM')).toEqual([]);
    }
  });

  it('judges the materials of each set by its own conditions, and says which', () => {
    const ffkm = completed().solve.materials.filter(({ material }) => material === 'FFKM');
    expect(ffkm.map(({ text }) => text.split(':')[0]).sort()).toEqual(['For glass', 'For steel']);
  });

  it('covers the span with one fluid, and keeps the pump from the glass jacket', () => {
    for (const rule of ['heat.fluid-span', 'heat.circulator-span'])
      expect(
        resultsOf(answer(), rule).every((r) => r.status === 'met' || r.status === 'met with caution'),
      ).toBe(true);
    const pump = resultsOf(answer(), 'heat.pump-pressure').find((r) => r.set === 0);
    expect(pump?.text).toMatch(/pressure control.*PS of the jacket/);
  });
});

describe('9, hot caustic soda in glass', () => {
  const answer = (): Asked => answerTo('09-caustic-soda');

  it('refuses glass, titanium, tantalum and stainless steel, each with its reason', () => {
    expect(answer().solve.result).toBe('impossible');
    for (const [material, reason] of [
      ['borosilicate glass 3.3', /not recommended above/],
      ['titanium grade 2', /hydriding/],
      ['tantalum', /dissolves tantalum/],
      ['1.4404', /stress-corrosion cracking/],
      ['1.4571', /stress-corrosion cracking/],
    ] as const) {
      const verdict = materialOf(answer(), material);
      expect(verdict?.status).toBe('not met');
      expect(verdict?.text).toMatch(reason);
    }
  });

  it('says what remains: nickel alloys with caution, and linings', () => {
    expect(materialOf(answer(), 'alloy C-22')?.status).toBe('met with caution');
    expect(materialOf(answer(), 'alloy 600')?.status).toBe('met with caution');
    expect(materialOf(answer(), 'PTFE')?.status).toMatch(/^met/);
    expect(answer().explain?.repairs.some((r) => /without “glass vessel”/.test(r.text))).toBe(true);
  });

  it('has a vapour pressure of its own of up to about 10 bar', () => {
    const bar = figureIn(answer(), /Sodium hydroxide has a vapour pressure .* about ([\d.]+) bar\(a\)/);
    expect(bar).toBeGreaterThan(8);
    expect(bar).toBeLessThan(10.5);
  });
});

describe('10, dry chlorine and a wish for titanium', () => {
  const answer = (): Asked => answerTo('10-dry-chlorine');

  it('refuses titanium because it can ignite in dry chlorine', () => {
    expect(answer().solve.result).toBe('impossible');
    expect(materialOf(answer(), 'titanium grade 2')?.status).toBe('not met');
    expect(materialOf(answer(), 'titanium grade 2')?.text).toMatch(/dry chlorine .* ignite/);
  });

  it('names dryness as what decides', () => {
    expect(says(answer(), /Whether chlorine is dry decides/, /titanium/)).toBe(true);
  });

  it('speaks of disc, springs and valves too', () => {
    expect(says(answer(), /titanium/, /disc, springs and seats of valves/)).toBe(true);
  });

  it('asks for a scrubber and says that chlorine is toxic', () => {
    expect(says(answer(), /Chlorine is toxic/, /scrubber/)).toBe(true);
  });
});
