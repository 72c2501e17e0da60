import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';

/** Exact: 0.453 592 37 kg × 9.806 65 m/s² / (0.0254 m)² [Pa], and 0.3048³ m³ [L]. */
const poundPerSquareInch = 6894.757_293_168;
const cubicFootL = 28.316_846_592;

/** U-1(c)(2)(i): 6 in, printed as 152 mm. */
const smallestDiameterM = 0.152;
/** U-1(c)(2)(h): 15 psi. */
const lowestPressurePa = 15 * poundPerSquareInch;
/** U-1(d): 3000 psi, above which the rules can need additions. */
const usualPressurePa = 3000 * poundPerSquareInch;

/** U-1(j): small vessels that need no inspection by an authorised inspector, volume against pressure. */
const smallVessels = [
  { volumeL: 5 * cubicFootL, pressurePa: 250 * poundPerSquareInch },
  { volumeL: 3 * cubicFootL, pressurePa: 350 * poundPerSquareInch },
  { volumeL: 1.5 * cubicFootL, pressurePa: 600 * poundPerSquareInch },
] as const;

const caution =
  'This is a statement of scope and not a certificate; state and local law decide what must carry the stamp. To be checked against the text in force.';

/**
 * What the ASME code says of a vessel: inside or outside the scope of Section VIII Division 1, and what it asks for.
 *
 *   outside: D_i ≤ 152 mm, or P ≤ 15 psi (103 kPa);  additions: P > 3000 psi (20.7 MPa)
 *
 * @param innerDiameterM          largest inside diameter, width, height or diagonal of the cross section [m]
 * @param maxPressurePaGauge      higher of internal and external design pressure [Pa]
 * @param volumeL                 inner volume [L]
 * @param quickActuatingClosure   the closure is quick-actuating
 * @param hazardousLocation       the place is classified by the electrical code
 * @returns inScope, reason, smallVessel (U-1(j)), demands, statement
 * @range unfired vessels that are not part of rotating machinery, not for human occupancy
 * @error CALC_OUT_OF_RANGE from the schema
 * @source asme-viii-1 U-1(c)(2), U-1(d), U-1(j), UG-125; nfpa-70 art. 500
 */
export const unitedStates = calculation({
  id: 'conformity.unitedStates',
  title: 'Scope of the ASME code for a vessel',
  inputs: z.strictObject({
    innerDiameterM: quantity(
      { unit: 'm', symbol: 'D_i', description: 'Inside diameter, width, height or diagonal, the largest' },
      z.number().positive(),
    ),
    maxPressurePaGauge: quantity(
      { unit: 'Pa', symbol: 'P', description: 'Higher of internal and external design pressure (gauge)' },
      z.number().min(0),
    ),
    volumeL: quantity({ unit: 'L', symbol: 'V', description: 'Inner volume' }, z.number().positive()),
    quickActuatingClosure: z
      .boolean()
      .default(false)
      .meta({ description: 'The closure opens by one motion' }),
    hazardousLocation: z
      .boolean()
      .default(false)
      .meta({ description: 'The place is classified by the electrical code' }),
  }),
  outputs: z.strictObject({
    inScope: z.boolean().meta({ description: 'Inside the scope of Section VIII Division 1' }),
    reason: z.string().meta({ description: 'The clause that decides' }),
    smallVessel: z.boolean().meta({ description: 'Within the limits of U-1(j), mark UM possible' }),
    demands: z.array(z.string()).meta({ description: 'What the code asks for' }),
    statement: z.string().meta({ description: 'What it means; a statement, not a certificate' }),
  }),
  formula: String.raw`\text{outside} \iff D_i \le 152\ \mathrm{mm} \lor P \le 15\ \mathrm{psi}`,
  range: 'unfired vessels, not for human occupancy, not part of rotating machinery, not for water alone',
  source: [
    published('asme-viii-1 U-1(c)(2)(h) and (i), U-1(d), U-1(j)(3), UG-125'),
    fromMemory('asme-viii-1 U-1(j)(1) and (2), UG-35.2, UG-116'),
    fromMemory('nfpa-70 art. 500'),
  ],
  compute: (given, log) => {
    const { innerDiameterM, maxPressurePaGauge, volumeL, quickActuatingClosure } = given;
    const isNarrow = innerDiameterM <= smallestDiameterM;
    const isLow = maxPressurePaGauge <= lowestPressurePa;
    const inScope = !isNarrow && !isLow;
    const reason = isNarrow
      ? `U-1(c)(2)(i): inside diameter ${shown(innerDiameterM * 1000)} mm, not above 152 mm, whatever the pressure`
      : isLow
        ? `U-1(c)(2)(h): pressure ${shown(maxPressurePaGauge / 1e5)} bar, not above 15 psi (1.03 bar)`
        : `inside diameter ${shown(innerDiameterM * 1000)} mm and pressure ${shown(maxPressurePaGauge / 1e5)} bar lie inside U-1`;
    const smallVessel =
      inScope &&
      !quickActuatingClosure &&
      smallVessels.some((limit) => volumeL <= limit.volumeL && maxPressurePaGauge <= limit.pressurePa);
    const demands = [
      ...(inScope
        ? [
            smallVessel
              ? 'Certification mark with designator UM, or U: the maker holds the certificate; UM without the authorised inspector at each vessel'
              : 'Certification mark with designator U: the maker holds the certificate, an authorised inspector accepts the vessel',
            'Materials of Section II, welding by Section IX, manufacturer’s data report',
            'Overpressure protection by UG-125 and following, whatever the size or pressure',
          ]
        : [
            'No mark by the code; a vessel may still be built and stamped by it where the state or the user asks',
          ]),
      ...(inScope && quickActuatingClosure
        ? ['Quick-actuating closure: cannot be opened under pressure, its locking shown, UG-35.2']
        : []),
      ...(inScope && maxPressurePaGauge > usualPressurePa
        ? ['Above 3000 psi additions to the rules can be necessary, U-1(d); Division 2 or 3 looked at']
        : []),
      ...(given.hazardousLocation
        ? [
            'Electrical parts for the class, division and group of the place, listed by a recognised laboratory',
          ]
        : ['Electrical parts listed by a recognised laboratory where the authority asks']),
    ];
    log?.({
      symbol: 'scope',
      formula: 'outside where D_i ≤ 152 mm or P ≤ 15 psi',
      substituted: `D_i = ${shown(innerDiameterM)} m, P = ${shown(maxPressurePaGauge)} Pa`,
      value: inScope ? 'inside' : 'outside',
      unit: '1',
      note: reason,
    });
    return succeed({
      inScope,
      reason,
      smallVessel,
      demands,
      statement: `The vessel is ${inScope ? 'inside' : 'outside'} the scope of ASME VIII-1 (${reason}). ${caution}`,
    });
  },
});
