import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { burstPressureFromOperating } from './burst-pressure-from-operating.js';
import { burstPressureWindow } from './burst-pressure-window.js';

/** Burst tolerance: 5 %, but at least 2 psi (up to 40 psi stamped). */
const relativeTolerance = 0.05;
const psiPa = 6894.757293168;
const absoluteTolerancePa = 2 * psiPa;
/** Below this allowable pressure the least tolerance leaves no usable window. */
const lowestAllowablePa = 8 * psiPa;

const pressure = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'Pa', symbol, description });
const range = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: '1', symbol, description }, z.number().min(0).max(0.2));

/** Tolerance as a fraction of the stamped pressure, careful over the whole manufacturing range. */
const toleranceOf = (allowable: number, lowestOverHighestStamped: number): number => {
  const stamped = allowable / (1 + relativeTolerance);
  const lowestStamped = lowestOverHighestStamped * stamped;
  if (lowestStamped * relativeTolerance >= absoluteTolerancePa) return relativeTolerance;
  const allowance = absoluteTolerancePa / lowestOverHighestStamped;
  return allowance / (allowable - allowance);
};

/**
 * Window of a bursting disc whose highest burst pressure stays at the maximum allowable pressure or below, and whether
 * it keeps the operating ratio.
 *
 *   p_s,max (1 + t) = PS;  window by relief.burstPressureWindow;  needed p_b,min ≥ p_op / r
 *
 * @param maxAllowablePressurePaGauge PS [Pa]
 * @param operatingPressurePaGauge    p_op, highest in operation [Pa]
 * @param operatingRatio              r of the disc type [-]: 0.7 conventional forward-acting
 * @param manufacturingRangePlus, manufacturingRangeMinus a, b [-]
 * @param burstTolerance              t [-]; 5 %, at least 2 psi, where not given
 * @param lowestPressurePaGauge       lowest pressure in the vessel [Pa]; below 0 the disc needs a vacuum support
 * @returns the window [Pa]; burstTolerance; highestOperatingPressurePaGauge; operatingRatioKept; vacuumSupportNeeded
 * @range PS ≥ 8 psi (55 kPa), at the coincident disc temperature, back pressure 0
 * @error CALC_OUT_OF_RANGE outside the range
 * @source asme-viii-1 UG-127; valve-selection-handbook pp. 216, 222, 248
 */
export const discWindow = calculation({
  id: 'relief.discWindow',
  title: 'Bursting disc below the maximum allowable pressure',
  inputs: z.strictObject({
    maxAllowablePressurePaGauge: quantity(
      { unit: 'Pa', symbol: 'PS', description: 'Maximum allowable pressure over atmosphere' },
      z.number().min(lowestAllowablePa),
    ),
    operatingPressurePaGauge: quantity(
      { unit: 'Pa', symbol: 'p_op', description: 'Highest operating pressure over atmosphere' },
      z.number().min(0),
    ),
    operatingRatio: quantity(
      {
        unit: '1',
        symbol: 'r',
        description: 'Highest ratio of operating to burst pressure of the disc type',
      },
      z.number().positive().max(1),
    ),
    manufacturingRangePlus: range('a', 'Upward manufacturing range, as a fraction'),
    manufacturingRangeMinus: range('b', 'Downward manufacturing range, as a fraction'),
    burstTolerance: range(
      't',
      'Burst tolerance, as a fraction; 5 %, at least 2 psi, where nothing is given',
    ).optional(),
    lowestPressurePaGauge: quantity(
      {
        unit: 'Pa',
        symbol: 'p_low',
        description: 'Lowest pressure in the vessel over atmosphere; 0 where nothing is given',
      },
      z.number().min(-101_325),
    ).optional(),
  }),
  outputs: z.strictObject({
    specifiedPressurePaGauge: pressure('p_spec', 'Pressure to be specified in the order'),
    maxStampedPressurePaGauge: pressure('p_s,max', 'Highest pressure that may be stamped'),
    minStampedPressurePaGauge: pressure('p_s,min', 'Lowest pressure that may be stamped'),
    maxBurstPressurePaGauge: pressure('p_b,max', 'Highest pressure at which the disc may burst'),
    minBurstPressurePaGauge: pressure('p_b,min', 'Lowest pressure at which the disc may burst'),
    neededMinBurstPressurePaGauge: pressure('p_n', 'Least burst pressure that keeps the operating ratio'),
    highestOperatingPressurePaGauge: pressure('p_op,max', 'Highest operating pressure of this disc'),
    burstTolerance: quantity({ unit: '1', symbol: 't', description: 'Burst tolerance taken' }),
    operatingRatioKept: z
      .boolean()
      .meta({ description: 'The lowest burst pressure keeps the operating ratio' }),
    vacuumSupportNeeded: z.boolean().meta({ description: 'The vessel can be under vacuum against the disc' }),
  }),
  formula: String.raw`p_{s,\max} = \frac{PS}{1 + t},\quad p_{b,\min} = \frac{p_{s,\max} (1 - b)(1 - t)}{1 + a} \ge \frac{p_{op}}{r}`,
  range: 'PS ≥ 55.2 kPa; at the coincident disc temperature; no back pressure',
  source: [
    published('asme-viii-1 UG-127'),
    published('valve-selection-handbook pp. 216, 222, 248'),
    published('applied-process-design-1-3 p. 457'),
  ],
  compute: (inputs, log) => {
    const { maxAllowablePressurePaGauge, operatingPressurePaGauge, operatingRatio } = inputs;
    const { manufacturingRangePlus, manufacturingRangeMinus } = inputs;
    const lowestOverHighest = (1 - manufacturingRangeMinus) / (1 + manufacturingRangePlus);
    const burstTolerance =
      inputs.burstTolerance ?? toleranceOf(maxAllowablePressurePaGauge, lowestOverHighest);
    if (burstTolerance > 0.5) {
      return outOfRange({
        field: 'maxAllowablePressurePaGauge',
        given: maxAllowablePressurePaGauge,
        unit: 'Pa',
        allowed: `a tolerance of 2 psi within half of the stamped pressure; give burstTolerance`,
      });
    }
    log?.({
      symbol: 't',
      formula: 'tolerance given, or 5 %, at least 2 psi of the lowest stamped pressure',
      substituted: `PS = ${shown(maxAllowablePressurePaGauge)}`,
      value: burstTolerance,
      unit: '1',
    });
    log?.({
      symbol: 'l',
      formula: '1 / (1 + t)',
      substituted: `1 / (1 + ${shown(burstTolerance)})`,
      value: 1 / (1 + burstTolerance),
      unit: '1',
      note: 'so that the highest burst pressure is PS, which is p_max below',
    });
    const window = burstPressureWindow.compute(
      {
        maxAllowablePressurePaGauge,
        stampedLimitRatio: 1 / (1 + burstTolerance),
        manufacturingRangePlus,
        manufacturingRangeMinus,
        burstTolerance,
      },
      log,
    );
    if (!window.ok) return window;
    const needed = burstPressureFromOperating.compute(
      { operatingPressurePaGauge, operatingRatio, manufacturingRangePlus },
      log,
    );
    if (!needed.ok) return needed;
    const { minBurstPressurePaGauge } = window.value;
    const neededMinBurstPressurePaGauge = needed.value.minBurstPressurePaGauge;
    const highestOperatingPressurePaGauge = operatingRatio * minBurstPressurePaGauge;
    log?.({
      symbol: 'p_op,max',
      formula: 'r p_b,min',
      substituted: `${shown(operatingRatio)} × ${shown(minBurstPressurePaGauge)}`,
      value: highestOperatingPressurePaGauge,
      unit: 'Pa',
    });
    return succeed({
      ...window.value,
      neededMinBurstPressurePaGauge,
      highestOperatingPressurePaGauge,
      burstTolerance,
      // Equal but for rounding counts as kept.
      operatingRatioKept: neededMinBurstPressurePaGauge <= minBurstPressurePaGauge * (1 + 1e-12),
      vacuumSupportNeeded: (inputs.lowestPressurePaGauge ?? 0) < 0,
    });
  },
});
