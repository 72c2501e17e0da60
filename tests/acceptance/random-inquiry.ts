import type { InquiryInput } from '@flangewise/model';
import fc from 'fast-check';

/** A number that is as likely small as large, to two digits. */
const spread = (from: number, to: number): fc.Arbitrary<number> =>
  fc
    .double({ min: Math.log(from), max: Math.log(to), noNaN: true })
    .map((exponent) => Number(Math.exp(exponent).toPrecision(2)));

/** What people ask for goes together: small vessels stand more than large ones, glass stands little. */
interface Scale {
  readonly batchL: readonly [number, number];
  readonly bar: readonly [number, number];
  readonly celsius: readonly [number, number];
  readonly construction?: 'metal' | 'glass' | 'lined';
}

const scales: readonly Scale[] = [
  { batchL: [0.003, 0.05], bar: [1, 100], celsius: [25, 200] },
  { batchL: [0.1, 1.5], bar: [1, 150], celsius: [25, 250] },
  { batchL: [0.1, 3], bar: [0.5, 4], celsius: [25, 150], construction: 'glass' },
  { batchL: [0.2, 8], bar: [1, 12], celsius: [25, 150], construction: 'lined' },
  { batchL: [1, 8], bar: [1, 100], celsius: [25, 250], construction: 'metal' },
  { batchL: [25, 300], bar: [0.5, 10], celsius: [25, 180] },
  // Anything: some of it cannot be had.
  { batchL: [0.01, 400], bar: [0.5, 300], celsius: [25, 300] },
];

const solvents = ['methanol', 'ethanol', 'water', 'toluene', 'acetone', 'acetic acid', 'n-hexane', 'DMF'];
const solutions = [
  { substance: 'hydrochloric acid', shares: [5, 20] },
  { substance: 'sodium hydroxide', shares: [5, 12] },
  { substance: 'sulfuric acid', shares: [10, 96] },
];
const gases = ['hydrogen', 'nitrogen', 'carbon monoxide', 'oxygen', 'ethylene', 'chlorine'];

const liquid = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...solvents).map((substance) => ({ substance })) },
  {
    weight: 1,
    arbitrary: fc
      .constantFrom(...solutions)
      .chain(({ substance, shares }) =>
        fc.constantFrom(...shares).map((share) => ({ substance, massFraction: `${String(share)} %` })),
      ),
  },
);

const media = fc
  .tuple(fc.option(liquid, { freq: 6 }), fc.option(fc.constantFrom(...gases), { freq: 2 }))
  .map(([solvent, gas]): NonNullable<NonNullable<InquiryInput['process']>['media']> => [
    ...(solvent === null ? [] : [{ ...solvent, role: 'solvent' as const }]),
    ...(gas === null ? [] : [{ substance: gas, role: 'gas' as const }]),
  ]);

/** Pressures and temperatures as clients write them. */
const pressure = ([from, to]: Scale['bar']): fc.Arbitrary<string> =>
  spread(from, to).chain((bar) =>
    fc.constantFrom(
      `${String(bar)} bar`,
      `${String(Math.round(bar * 14.5038))} psi`,
      `${(bar / 10).toFixed(3)} MPa`,
    ),
  );

const temperature = ([from, to]: Scale['celsius']): fc.Arbitrary<string> =>
  fc
    .integer({ min: from, max: to })
    .chain((celsius) =>
      fc.constantFrom(
        `${String(celsius)} °C`,
        `${String(celsius + 273.15)} K`,
        `${(celsius * 1.8 + 32).toFixed(1)} °F`,
      ),
    );

/** Given now and then, more often left out. */
const rarely = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(arbitrary, { freq: 1, nil: undefined });

const yes = fc.constant(true);

const processOf = ({ bar, celsius }: Scale) =>
  fc.record({
    kind: rarely(fc.constantFrom('hydrogenation', 'polymerisation', 'crystallisation', 'other' as const)),
    media,
    pressure: fc.record({ highest: pressure(bar) }),
    temperature: fc.record({
      highest: temperature(celsius),
      lowest: rarely(fc.constantFrom('0 °C', '10 °C', '20 °C')),
    }),
    viscosity: rarely(
      fc
        .record({ start: spread(0.3, 50), end: spread(0.3, 5000) })
        .map(({ start, end }) => ({ start: `${String(start)} mPa·s`, end: `${String(end)} mPa·s` })),
    ),
    stirringSpeed: rarely(spread(50, 1200).map((speed) => ({ highest: `${String(speed)} rpm` }))),
    vacuum: rarely(yes),
    foaming: rarely(yes),
  });

const setOf = ({ batchL, construction }: Scale) =>
  fc.record({
    batchVolume: spread(...batchL).map((litres) => `${String(litres)} L`),
    count: fc.constantFrom(1, 1, 1, 1, 2),
    construction: fc.constant(construction),
  });

const site = fc.record({
  zone: rarely(fc.constantFrom('none', '2', '1' as const)),
  ceilingHeight: rarely(fc.constantFrom('2.6 m', '3.2 m', '5 m')),
  country: rarely(fc.constantFrom('Germany', 'United Kingdom', 'United States')),
});

const requirements = fc.record({
  openingsPerDay: rarely(fc.constantFrom(0.2, 2, 10)),
  seeInside: rarely(yes),
  bottomOutlet: rarely(yes),
  uptakeRecorded: rarely(yes),
  materialCertificates: rarely(yes),
});

/** Inquiries of the kind that clients send, within the spans of stirred pressure reactors; unsaid fields are left out. */
export const randomInquiry: fc.Arbitrary<InquiryInput> = fc.constantFrom(...scales).chain((scale) =>
  fc
    .record({
      title: fc.constant('Random inquiry'),
      process: processOf(scale),
      sets: fc.oneof(
        { weight: 7, arbitrary: fc.tuple(setOf(scale)) },
        { weight: 1, arbitrary: fc.tuple(setOf(scale), setOf(scale)) },
      ),
      arrangement: fc.constant('alternate' as const),
      site,
      requirements,
    })
    .map((inquiry) => JSON.parse(JSON.stringify(inquiry)) as InquiryInput),
);
