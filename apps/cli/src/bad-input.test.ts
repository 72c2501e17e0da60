import { existsSync } from 'node:fs';
import { mkdtemp, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exitCodes } from './exit-code.js';
import { run, runJson } from './testing/run.js';

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bad-input-'));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

const fileWith = async (name: string, content: unknown): Promise<string> => {
  const path = join(folder, name);
  await writeFile(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
};

interface Refused {
  readonly error: { readonly code: string; readonly troubles: readonly Record<string, string>[] };
}

/** Troubles of a command that has to end with bad input, by path. */
const troublesOf = async (
  argv: readonly string[],
  stdin?: unknown,
): Promise<ReadonlyMap<string, Record<string, string>>> => {
  const { exit, answer, said } = await runJson(argv, stdin);
  expect(exit).toBe(exitCodes.badInput);
  const { troubles } = (answer as Refused).error;
  expect(said.trim().split('\n')).toHaveLength(troubles.length);
  return new Map(troubles.map((t) => [t['path'] ?? '', t]));
};

const inquiry = {
  title: 'Test',
  process: { pressure: { highest: '6 bar' } },
  sets: [{ batchVolume: '1 L' }],
};

describe('an inquiry that cannot be used', () => {
  it('is refused with every trouble at once: path, value, what is allowed', async () => {
    const troubles = await troublesOf(['solve', '-'], {
      title: 'Test',
      process: { pressure: { highest: '60 furlong' }, temperature: { highest: '-300 °C' } },
      sets: [{ batchVolume: '-1 L' }],
      site: { zone: '3' },
    });
    expect([...troubles.keys()]).toEqual([
      'process.pressure.highest',
      'process.temperature.highest',
      'sets[0].batchVolume',
      'site.zone',
    ]);
    expect(troubles.get('process.pressure.highest')?.['message']).toContain('bar');
    expect(troubles.get('process.temperature.highest')?.['given']).toContain('-300 °C');
    expect(troubles.get('site.zone')?.['message']).toMatch(/one of 0, 1, 2, 20, 21, 22, none$/);
  });

  it('is refused while a form is half filled', async () => {
    const troubles = await troublesOf(['solve', '-'], {
      process: { pressure: { highest: { value: 60 } } },
      sets: [{ count: 2.5 }],
    });
    expect([...troubles.keys()]).toContain('title');
    expect([...troubles.keys()].some((path) => path.startsWith('process.pressure.highest'))).toBe(true);
    expect([...troubles.keys()]).toContain('sets[0].count');
  });

  it('says where the JSON breaks', async () => {
    const path = await fileWith('broken.json', '{\n  "title": "x",\n}');
    const { exit, said } = await run(['solve', path]);
    expect(exit).toBe(exitCodes.badInput);
    expect(said).toMatch(/^INPUT_NOT_JSON .*broken\.json.*line 3, column 1/);
  });

  it.each([
    ['', 'INPUT_NOT_JSON'],
    ['[]', 'INPUT_INVALID'],
    ['null', 'INPUT_INVALID'],
    ['7', 'INPUT_INVALID'],
  ])('is refused as %s', async (text, code) => {
    const { exit, answer } = await runJson(['solve', '-'], text);
    expect(exit).toBe(exitCodes.badInput);
    expect((answer as Refused).error.code).toBe(code);
  });

  it('may not be missing, a folder, or larger than a document can be', async () => {
    const huge = await fileWith('huge.json', '');
    await truncate(huge, 50_000_000);
    for (const [path, code] of [
      [join(folder, 'none.json'), 'INPUT_NOT_FOUND'],
      [folder, 'INPUT_UNREADABLE'],
      [huge, 'INPUT_TOO_LARGE'],
    ] as const) {
      const { exit, answer, said } = await runJson(['solve', path]);
      expect(exit).toBe(exitCodes.badInput);
      expect((answer as Refused).error.code).toBe(code);
      if (code === 'INPUT_TOO_LARGE') expect(said).toContain('at most 10 MB');
    }
    const typed = await runJson(['solve', '-'], `"${'x'.repeat(10_000_001)}"`);
    expect((typed.answer as Refused).error.code).toBe('INPUT_TOO_LARGE');
  });

  it('keeps a medium that no table knows as an open point, and names what may have been meant', async () => {
    const { exit, answer, said } = await runJson(['solve', '-', '--most', '1'], {
      ...inquiry,
      process: { media: [{ substance: 'methnaol', role: 'solvent' }] },
    });
    expect(exit).not.toBe(exitCodes.badInput);
    expect(said).toContain('process.media[0].substance: no table knows "methnaol"; was methanol meant?');
    const { openPoints } = answer as { openPoints: { question: string }[] };
    expect(openPoints.some(({ question }) => question.includes('methnaol'))).toBe(true);
  });
});

describe('an inquiry that is half filled', () => {
  const half = { title: 'Half filled', process: { media: [{ substance: 'water', role: 'solvent' }] } };

  it.each(['narrow', 'explain'])('is told by %s together with what it leaves open', async (command) => {
    const { out, said } = await run([command, '-'], half);
    expect(out).toMatch(/^Half filled\n/);
    expect(out).toMatch(/Open points\n(.*\n)*.*highest pressure, gauge or absolute/);
    expect(said).toBe('');
    const asked = await runJson([command, '-'], half);
    expect(asked.said).toMatch(/^The inquiry leaves \d+ points open.*process\.pressure/m);
  });

  it('leaves nothing open without a word where a system is taken', async () => {
    const { said } = await run(['solve', '-', '--take', 'A', '--most', '1'], half);
    expect(said).toMatch(/^The inquiry leaves \d+ points open.*process\.pressure/m);
  }, 20_000);
});

describe('a system that the range cannot follow', () => {
  const system = {
    inquiry,
    frame: { drive: 'DR-9999', lift: null },
    sets: [{ choices: { vessel: null, stirrer: 'VS-1002', closure: 'toString' } }],
  };

  it.each(['check', 'narrow', 'explain'])(
    'is refused by %s: path, number, what is allowed',
    async (command) => {
      const troubles = await troublesOf([command, '-'], system);
      expect([...troubles.keys()]).toEqual([
        'frame.drive',
        'sets[0].vessel',
        'sets[0].closure',
        'sets[0].stirrer',
      ]);
      const drive = troubles.get('frame.drive');
      expect(drive?.['code']).toBe('INPUT_UNKNOWN_ITEM');
      expect(drive?.['given']).toBe('DR-9999');
      expect(drive?.['message']).toMatch(/Drive may be [A-Z]{2}-\d+/);
      expect(troubles.get('sets[0].vessel')?.['code']).toBe('INPUT_SLOT_EMPTY');
      expect(troubles.get('sets[0].stirrer')?.['code']).toBe('INPUT_WRONG_SLOT');
    },
  );

  it('is refused where an item is no longer made', async () => {
    const [first] = pricedDemoCatalogue.items;
    const catalogue = await fileWith('withdrawn.json', {
      ...pricedDemoCatalogue,
      items: pricedDemoCatalogue.items.map((item) =>
        item === first ? { ...item, life: 'discontinued' } : item,
      ),
    });
    const troubles = await troublesOf(['narrow', '-', '--catalogue', catalogue], {
      inquiry,
      sets: [{ choices: { vessel: first?.id } }],
    });
    expect(troubles.get('sets[0].vessel')?.['code']).toBe('INPUT_ITEM_WITHDRAWN');
  });

  it('is refused with other sets than its inquiry, or a special that cannot be made', async () => {
    expect([
      ...(await troublesOf(['check', '-'], { inquiry, sets: [{ choices: {} }, { choices: {} }] })).keys(),
    ]).toEqual(['sets']);
    const special = { volumeL: 2, pressurePaGauge: 5e7, maxTemperatureK: 573.15, material: 'balsa' };
    const troubles = await troublesOf(['check', '-'], {
      inquiry,
      sets: [{ choices: {} }],
      specials: [special],
    });
    expect([...troubles.keys()][0]).toMatch(/^specials/);
  });

  it('gets no offer, and nothing is written', async () => {
    const out = join(folder, 'offer');
    await troublesOf(['offer', '-', '--out', out], system);
    await troublesOf(['offer', '-', '--out', out, '--date', '24.11.2026'], {
      inquiry,
      sets: [{ choices: {} }],
    });
    const incomplete = await runJson(['offer', '-', '--out', out], { inquiry, sets: [{ choices: {} }] });
    expect(incomplete.exit).toBe(exitCodes.notValid);
    const { code, troubles } = (incomplete.answer as Refused).error;
    expect(code).toBe('SYSTEM_INCOMPLETE');
    expect(troubles.map((t) => t['path'])).toContain('sets[0].vessel');
    expect(existsSync(out)).toBe(false);
  });
});

describe('a catalogue that cannot be used', () => {
  it('is refused with its troubles, one a line', async () => {
    const [first, second] = pricedDemoCatalogue.items;
    const catalogue = await fileWith('catalogue.json', {
      ...pricedDemoCatalogue,
      items: [first, { ...second, id: first?.id }, { ...second, massKg: -1 }],
      priceLists: [],
    });
    const { exit, said } = await run(['audit', '--catalogue', catalogue]);
    expect(exit).toBe(exitCodes.badInput);
    expect(said).toContain('items[2].massKg');
  });
});

describe('a calculation that cannot be run', () => {
  it.each([
    ['gas.dosedAmount', { foo: 1 }, 'CALC'],
    ['fluid.vapourPressure', { substance: 'unobtainium', temperatureK: 300 }, 'CALC_UNKNOWN_SUBSTANCE'],
    ['fluid.vapourPressure', { substance: 'water', temperatureK: -5 }, ''],
    ['closure.nothing', {}, 'CALC_UNKNOWN_CALCULATION'],
  ])('%s of %j is bad input', async (id, inputs, code) => {
    const { exit, answer } = await runJson(['calc', id, '--input', '-'], inputs);
    expect(exit).toBe(exitCodes.badInput);
    const { error } = answer as Refused;
    if (code !== 'CALC' && code !== '') expect(error.code).toBe(code);
    expect(error.troubles.length).toBeGreaterThan(0);
  });

  it('names every missing field at once', async () => {
    const troubles = await troublesOf(['calc', 'closure.endForce', '--input', '-'], {});
    expect([...troubles.keys()]).toEqual(['gasketDiameterM', 'pressurePaGauge']);
    expect(troubles.get('gasketDiameterM')?.['message']).toMatch(
      /^give G, Diameter of .*: number > 0 \[m\]$/,
    );
  });
});

describe('the command line itself', () => {
  it.each([
    [['solv', 'x']],
    [['solve']],
    [['solve', 'x', '--nonsense']],
    [['calc', 'closure.endForce']],
    [['schema', 'nothing']],
    [['solve', '-', '--most', 'many']],
  ])('ends with bad input for %j', async (argv) => {
    const { exit, said } = await run(argv, inquiry);
    expect(exit).toBe(exitCodes.badInput);
    expect(said).not.toBe('');
  });

  const lineOf = async (argv: readonly string[], stdin: unknown = ''): Promise<string> => {
    const { exit, said } = await run(argv, stdin);
    expect(exit).toBe(exitCodes.badInput);
    expect(said.trim().split('\n')).toHaveLength(1);
    return said;
  };

  it('names the nearest command or option, and all that there are', async () => {
    const command = await lineOf(['chek', 'x']);
    expect(command).toMatch(/^USAGE .*chek given.*was check meant\?.*solve, check, narrow.*schema/);
    const option = await lineOf(['solve', 'x', '--moste', '3']);
    expect(option).toMatch(/^USAGE .*solve: --moste given.*was --most meant\?.*--take.*--json, --catalogue/);
    expect(await lineOf(['solve', 'x', '--nonsense'])).toMatch(/there are --most/);
  });

  it('says which word is missing, with an example', async () => {
    expect(await lineOf(['check'])).toContain(
      '<system> is missing; for instance: flangewise check system.json',
    );
    expect(await lineOf(['solve', '-', '--most'])).toContain('--most <number>');
  });

  it('tells the same as JSON', async () => {
    const troubles = await troublesOf(['check']);
    expect(troubles.get('check')?.['message']).toContain('flangewise check system.json');
  });

  it('lists the calculations where none is named, and knows a wrong one without its inputs', async () => {
    const { exit, out } = await run(['calc']);
    expect(exit).toBe(exitCodes.done);
    expect(out).toContain('relief.gasArea');
    expect(await lineOf(['calc', 'relief.gasAre'])).toMatch(
      /no such calculation; was relief.gasArea meant\?/,
    );
  });

  it('says what a document is that another command takes', async () => {
    expect(await lineOf(['check', '-'], inquiry)).toMatch(/is an inquiry.*"solve" takes an inquiry/);
    expect(await lineOf(['solve', '-'], { inquiry, sets: [{ choices: {} }] })).toMatch(
      /is a system.*"check" takes a system/,
    );
  });

  it('says what a file has to hold that is not JSON', async () => {
    expect(await lineOf(['solve', '-'], 'Dear Sirs')).toContain('tests/acceptance/inquiries');
  });

  it('says that a volume is above zero, as it is asked', async () => {
    expect(await lineOf(['solve', '-'], { ...inquiry, sets: [{ batchVolume: '-5 L' }] })).toMatch(
      /-5 L.*above zero/,
    );
  });

  it.each([[['--help']], [['help', 'solve']], [['solve', '--help']], [['--version']]])(
    'answers %j',
    async (argv) => {
      const { exit, out, said } = await run(argv);
      expect(exit).toBe(exitCodes.done);
      expect(out).not.toBe('');
      expect(said).toBe('');
    },
  );
});
