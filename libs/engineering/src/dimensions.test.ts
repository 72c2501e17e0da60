import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Calculation, evaluate } from './calculation.js';
import { type FieldLine, fieldTable } from './field-table.js';
import { allReferenceCases } from './reference-cases.js';
import { calculations } from './registry.js';

/** Exponents of m, kg, s, K, mol and A. */
type Dimension = readonly [number, number, number, number, number, number];

const atoms: Readonly<Record<string, Dimension>> = {
  m: [1, 0, 0, 0, 0, 0],
  kg: [0, 1, 0, 0, 0, 0],
  g: [0, 1, 0, 0, 0, 0],
  mg: [0, 1, 0, 0, 0, 0],
  s: [0, 0, 1, 0, 0, 0],
  min: [0, 0, 1, 0, 0, 0],
  h: [0, 0, 1, 0, 0, 0],
  d: [0, 0, 1, 0, 0, 0],
  K: [0, 0, 0, 1, 0, 0],
  mol: [0, 0, 0, 0, 1, 0],
  A: [0, 0, 0, 0, 0, 1],
  L: [3, 0, 0, 0, 0, 0],
  N: [1, 1, -2, 0, 0, 0],
  Pa: [-1, 1, -2, 0, 0, 0],
  bar: [-1, 1, -2, 0, 0, 0],
  J: [2, 1, -2, 0, 0, 0],
  W: [2, 1, -3, 0, 0, 0],
  V: [2, 1, -3, 0, 0, -1],
  T: [0, 1, -2, 0, 0, -1],
  Ohm: [2, 1, -3, 0, 0, -2],
};

/** The factor by which a quantity grows when the base units shrink by `factors`. */
const factorOf = (unit: string, factors: readonly number[]): number => {
  let factor = 1;
  // A quotient holds for the next unit or for all in the brackets that follow.
  let [sign, outer] = [1, 1];
  for (const [token] of unit.matchAll(/[./()]|[A-Za-z]+-?\d*/gu)) {
    if (token === '/') sign = -outer;
    else if (token === '.') sign = outer;
    else if (token === '(') outer = sign;
    else if (token === ')') [sign, outer] = [1, 1];
    else {
      const [, name = '', power = ''] = /^([A-Za-z]+)(-?\d*)$/u.exec(token) ?? [];
      const exponents = atoms[name] ?? [];
      exponents.forEach((exponent, i) => {
        factor *= (factors[i] ?? 1) ** (exponent * sign * (power === '' ? 1 : Number(power)));
      });
    }
  }
  return factor;
};

/** Every number of a record in other base units, by the unit of its field. */
const rescaled = (
  value: unknown,
  { lines, factors }: { readonly lines: readonly FieldLine[]; readonly factors: readonly number[] },
  path = '',
): unknown => {
  const within = { lines, factors };
  if (typeof value === 'number') {
    return value * factorOf(lines.find(({ field }) => field === path)?.unit ?? '1', factors);
  }
  if (Array.isArray(value)) {
    return value.map((item) => rescaled(item, within, typeof item === 'object' ? `${path}[]` : path));
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [
      key,
      rescaled(item, within, path === '' ? key : `${path}.${key}`),
    ]),
  );
};

/** Whether two answers are the same but for rounding. */
const agree = (left: unknown, right: unknown): boolean => {
  if (typeof left === 'number' && typeof right === 'number') {
    return Math.abs(left - right) <= 1e-7 * Math.abs(right);
  }
  if (typeof left !== 'object' || left === null || typeof right !== 'object' || right === null) {
    // Texts quote numbers, which differ.
    return typeof left === 'string' ? typeof right === 'string' : left === right;
  }
  const keys = Object.keys(right);
  return (
    keys.length === Object.keys(left).length &&
    keys.every((key) =>
      agree((left as Record<string, unknown>)[key], (right as Record<string, unknown>)[key]),
    )
  );
};

const sampleFile = new URL('../../../tests/bench/engineering-samples.json', import.meta.url);
const samples = [
  ...(JSON.parse(readFileSync(sampleFile, 'utf8')) as readonly {
    readonly calculation: string;
    readonly inputs: Readonly<Record<string, unknown>>;
  }[]),
  ...allReferenceCases(),
];

/** Other base units: each of the first five by itself, and all at once. */
const unitSystems = [
  [1.25, 1, 1, 1, 1, 1],
  [1, 1.25, 1, 1, 1, 1],
  [1, 1, 1.25, 1, 1, 1],
  [1, 1, 1, 1.1, 1, 1],
  [1, 1, 1, 1, 1.25, 1],
  [0.8, 1.2, 0.9, 0.95, 1.3, 0.7],
];

/** What comes out in other base units against the result in other base units. */
const comparisons = (subject: Calculation): readonly boolean[] => {
  const [inputLines, outputLines] = [fieldTable(subject.inputs), fieldTable(subject.outputs)];
  return samples
    .filter(({ calculation }) => calculation === subject.id)
    .flatMap(({ inputs }) =>
      unitSystems.flatMap((factors) => {
        const before = evaluate(subject, inputs);
        const moved = rescaled(inputs, { lines: inputLines, factors }) as Record<string, unknown>;
        const after = evaluate(subject, moved);
        if (!before.ok || !after.ok) return [];
        return [agree(after.value, rescaled(before.value, { lines: outputLines, factors }))];
      }),
    );
};

/** Calculations that hold a figure with a unit of its own, and which figure that is. */
const tied: Readonly<Record<string, readonly string[]>> = {
  'tables and correlations of measured data': [
    'closure.boltProofStress',
    'coupling.deratedTorque',
    'fluid.boilingTemperature',
    'fluid.chargedPressure',
    'fluid.heatOfVaporisation',
    'fluid.hotVolume',
    'fluid.liquidConductivity',
    'fluid.liquidDensity',
    'fluid.liquidFullFraction',
    'fluid.liquidHeatCapacity',
    'fluid.liquidViscosity',
    'fluid.mixture',
    'fluid.properties',
    'fluid.solutionDensity',
    'fluid.solutionViscosity',
    'fluid.totalPressure',
    'fluid.vapourPressure',
    'gas.compressibilityFactor',
    'gas.density',
    'gas.dosedAmount',
    'gas.uptakeReservoir',
    'hazardousArea.substance',
    'heat.heatTransferFluid',
    'heat.removableHeat',
    'heat.typicalCoefficient',
    'lifting.handledMass',
    'lifting.recommendedWeight',
    'materials.allowableStress',
    'materials.proofStrength',
    'relief.fireHeat',
    'relief.standardOrifice',
    'relief.steamArea',
    'stirring.viscosityRange',
    'strength.glassThermalShock',
    'strength.ratingCurve',
    'utilities.gasConsumption',
  ],
  'molar gas constant': [
    'relief.dischargedArea',
    'relief.gasArea',
    'relief.lineFlow',
    'relief.regulatorFailedOpenFlow',
    'relief.ventBackPressure',
    'relief.ventThrust',
    'relief.worstInflow',
  ],
  'gravity, or radiation': [
    'heat.ambientLoss',
    'stirring.gassedPowerRatio',
    'stirring.justSuspendedSpeed',
    'utilities.floorLoad',
  ],
  'density, or heat capacity, of water': [
    'geometry.vesselCentreOfGravity',
    'relief.liquidArea',
    'utilities.coolingWater',
  ],
  'temperature in °C': [
    'hazardousArea.dustSurfaceLimit',
    'hazardousArea.gasSurfaceLimit',
    'hazardousArea.requiredMarking',
    'hazardousArea.temperatureClass',
  ],
  'limit or usual value in a unit': [
    'closure.boltLoad',
    'conformity.greatBritain',
    'geometry.headroom',
    'heat.circulatorCurve',
    'ped.fluidGroup',
    'ped.vesselCategory',
    'special.vessel',
    'strength.glassVessel',
    'strength.requiredWall',
    'strength.vesselExternalRating',
    'utilities.electricalLoad',
    'utilities.roomHeat',
  ],
  'unit that depends on the flow index': ['stirring.metznerOtto'],
};
const tiedIds = new Set(Object.values(tied).flat());

describe('a unit', () => {
  it.each([
    ['m', 2],
    ['m3/kg', 8 / 3],
    ['W/(m2.K)', 3 / (125 * 7)],
    ['J/(kg.K)', 4 / (25 * 7)],
    ['kg/(m2.s)', 3 / (4 * 5)],
    ['%', 1],
    ['1/K', 1 / 7],
  ])('%s grows as its parts', (unit, expected) => {
    expect(factorOf(unit, [2, 3, 5, 7, 11, 13])).toBeCloseTo(expected, 12);
  });
});

describe.each(
  calculations.filter(({ id }) => !tiedIds.has(id)).map((subject) => [subject.id, subject] as const),
)('%s', (_id, subject) => {
  it('gives the same in every system of units', () => {
    expect(comparisons(subject)).not.toContain(false);
  });
});

it('compares more than half of all calculations, most of them at several points', () => {
  const compared = calculations.filter(
    (subject) => !tiedIds.has(subject.id) && comparisons(subject).length > 0,
  );
  expect(compared.length).toBeGreaterThan(calculations.length / 2);
});

it.each([...tiedIds])('%s does hold a figure with a unit', (id) => {
  const subject = calculations.find((one) => one.id === id);
  expect(subject && comparisons(subject)).toContain(false);
});
