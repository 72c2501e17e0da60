import type { Calculation } from '../calculation.js';
import { assemblyPressure } from './assembly-pressure.js';
import { conicalPressure } from './conical-pressure.js';
import { conicalThickness } from './conical-thickness.js';
import { cylinderPressure } from './cylinder-pressure.js';
import { cylinderThickness } from './cylinder-thickness.js';
import { ellipsoidalPressure } from './ellipsoidal-pressure.js';
import { ellipsoidalThickness } from './ellipsoidal-thickness.js';
import { externalPressureCylinder } from './external-pressure-cylinder.js';
import { externalPressureEllipsoidalEnd } from './external-pressure-ellipsoidal-end.js';
import { flatCover } from './flat-cover.js';
import { flatEndPressure } from './flat-end-pressure.js';
import { flatEndThickness } from './flat-end-thickness.js';
import { glassThermalShock } from './glass-thermal-shock.js';
import { glassTubePressure } from './glass-tube-pressure.js';
import { glassVessel } from './glass-vessel.js';
import { hydrostaticTest } from './hydrostatic-test.js';
import { openingPressure } from './opening-pressure.js';
import { ratingCurve } from './rating-curve.js';
import { requiredWall } from './required-wall.js';
import { spherePressure } from './sphere-pressure.js';
import { sphereThickness } from './sphere-thickness.js';
import { thickWallStress } from './thick-wall-stress.js';
import { torisphericalPressure } from './torispherical-pressure.js';
import { torisphericalThickness } from './torispherical-thickness.js';
import { vesselExternalRating } from './vessel-external-rating.js';
import { vesselRating } from './vessel-rating.js';

/** Strength of pressure parts. */
export const strengthCalculations: readonly Calculation[] = [
  assemblyPressure,
  conicalPressure,
  conicalThickness,
  cylinderPressure,
  cylinderThickness,
  ellipsoidalPressure,
  ellipsoidalThickness,
  externalPressureCylinder,
  externalPressureEllipsoidalEnd,
  flatCover,
  flatEndPressure,
  flatEndThickness,
  glassThermalShock,
  glassTubePressure,
  glassVessel,
  hydrostaticTest,
  openingPressure,
  ratingCurve,
  requiredWall,
  spherePressure,
  sphereThickness,
  thickWallStress,
  torisphericalPressure,
  torisphericalThickness,
  vesselExternalRating,
  vesselRating,
];
