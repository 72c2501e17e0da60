import type { Rule } from './rule.js';
import { bottomValveFits } from './rules/accessories/bottom-valve.js';
import { coverPorts } from './rules/accessories/ports.js';
import { gasTubeReach, samplingTubeReach, thermowellReach } from './rules/accessories/reach.js';
import {
  samplingWish,
  dosingWish,
  condenserWish,
  basketWish,
  probeWish,
} from './rules/accessories/wanted.js';
import { adiabaticRiseAdvice } from './rules/advice/adiabatic-rise.js';
import { coolDown } from './rules/advice/cool-down.js';
import { cutOffs } from './rules/advice/cut-offs.js';
import { machineryLaw, explosionLaw, electricalLaw } from './rules/advice/directives.js';
import { discOrder } from './rules/advice/disc-order.js';
import { exportLicence } from './rules/advice/export-licence.js';
import { gasIntoLiquid } from './rules/advice/gas-into-liquid.js';
import { gasReservoir } from './rules/advice/gas-reservoir.js';
import { heatUpAdvice } from './rules/advice/heat-up.js';
import { highestSpeedAdvice } from './rules/advice/highest-speed.js';
import { reliefAreas } from './rules/advice/relief-areas.js';
import { removalByFilms } from './rules/advice/removal-by-films.js';
import { controlSignals } from './rules/advice/signals.js';
import { stirringState } from './rules/advice/stirring-state.js';
import { tighteningAdvice } from './rules/advice/tightening.js';
import { totalPressureAdvice } from './rules/advice/total-pressure.js';
import { upkeep } from './rules/advice/upkeep.js';
import { uptakeLimitAdvice } from './rules/advice/uptake-limit.js';
import { utilities } from './rules/advice/utilities.js';
import { coilHazards } from './rules/caution/coil.js';
import { explosiveMixture } from './rules/caution/explosive-mixture.js';
import { fluidGroupOfVapour } from './rules/caution/fluid-group-of-vapour.js';
import { glassUnderGas } from './rules/caution/glass.js';
import { hotOutside } from './rules/caution/hot-outside.js';
import { hydrogenService } from './rules/caution/hydrogen.js';
import { inertingCaution } from './rules/caution/inerting.js';
import { insideZone } from './rules/caution/inside-zone.js';
import { liningPermeation } from './rules/caution/lining.js';
import { oxygenService } from './rules/caution/oxygen.js';
import { toxicGas } from './rules/caution/toxic-gas.js';
import { boltLoad } from './rules/closure/bolt-load.js';
import { closureBore } from './rules/closure/closure-bore.js';
import { coverBore } from './rules/closure/cover-bore.js';
import { decompression } from './rules/closure/decompression.js';
import { endForce } from './rules/closure/end-force.js';
import { hotContents } from './rules/closure/hot-contents.js';
import { interlock } from './rules/closure/interlock.js';
import { openingTime } from './rules/closure/opening-time.js';
import { sealBore } from './rules/closure/seal-bore.js';
import { staticCharge } from './rules/hazardous-area/charging.js';
import { hotSurface } from './rules/hazardous-area/hot-surface.js';
import { ignitionKnown } from './rules/hazardous-area/ignition-known.js';
import { areaMarking } from './rules/hazardous-area/marking.js';
import { circulatorSpan } from './rules/heat/circulator-span.js';
import { coilFits } from './rules/heat/coil-fits.js';
import { coldSource } from './rules/heat/cold-source.js';
import { coolingNeeded } from './rules/heat/cooling.js';
import { fluidSpan } from './rules/heat/fluid-span.js';
import { heatSource } from './rules/heat/heat-source.js';
import { heatUpByJacket, heatUpByMantle } from './rules/heat/heat-up.js';
import { heaterFits } from './rules/heat/heater-fits.js';
import { heaterTemperature } from './rules/heat/heater-temperature.js';
import { pumpPressure } from './rules/heat/pump-pressure.js';
import { heatRemoval } from './rules/heat/removal.js';
import { thermalShock } from './rules/heat/thermal-shock.js';
import { coverLiftCapacity, vesselLiftCapacity } from './rules/lifting/capacity.js';
import { handMass } from './rules/lifting/hand-mass.js';
import { headroom } from './rules/lifting/headroom.js';
import { internalsClear, floorClear } from './rules/lifting/internals.js';
import { quickClosureNeedsLift } from './rules/lifting/quick-closure-needs-lift.js';
import { liftStroke } from './rules/lifting/stroke.js';
import { tilt } from './rules/lifting/tilt.js';
import { carrierInHydrogen } from './rules/material/carrier-in-hydrogen.js';
import { corrosion } from './rules/material/corrosion.js';
import { coverMaterial } from './rules/material/cover-material.js';
import { gasSupplyMaterial } from './rules/material/gas-supply.js';
import { mediumOnFile } from './rules/material/medium-on-file.js';
import { noMetal } from './rules/material/no-metal.js';
import { vesselMaterial } from './rules/material/vessel-material.js';
import { certificatesWish } from './rules/papers/certificates.js';
import { qualificationWish } from './rules/papers/qualification.js';
import { limitBelowTs } from './rules/protection/limit-below-ts.js';
import { limiterNeeded } from './rules/protection/limiter.js';
import { shieldNeeded } from './rules/protection/shield.js';
import { burstBelowParts } from './rules/relief/burst-below-parts.js';
import { burstBelowPs } from './rules/relief/burst-below-ps.js';
import { reliefGasArea } from './rules/relief/gas-area.js';
import { gasLimitNeeded } from './rules/relief/gas-limit.js';
import { gaugeRange } from './rules/relief/gauge-range.js';
import { operatingRatio } from './rules/relief/operating-ratio.js';
import { runaway } from './rules/relief/runaway.js';
import { vacuumSupport } from './rules/relief/vacuum-support.js';
import { ventLoad } from './rules/relief/vent-load.js';
import { ventLineNeeded } from './rules/relief/vent-line.js';
import { bafflesFit } from './rules/stirring/baffles.js';
import { bushing } from './rules/stirring/bushing.js';
import { couplingTemperature } from './rules/stirring/coupling-temperature.js';
import { couplingTorque } from './rules/stirring/coupling-torque.js';
import { shaftCriticalSpeed } from './rules/stirring/critical-speed.js';
import { driveTorque, drivePower } from './rules/stirring/drive-load.js';
import { lowestSpeed } from './rules/stirring/lowest-speed.js';
import { couplingAtSlowest, driveAtSlowest } from './rules/stirring/slowest-turn.js';
import { shaftLength, stirrerOnShaft, shaftInCoupling } from './rules/stirring/shaft-fits.js';
import { driveSpeed, couplingSpeed, stirrerSpeed } from './rules/stirring/speed.js';
import { stirrerFits } from './rules/stirring/stirrer-fits.js';
import { stirrerInCoil } from './rules/stirring/stirrer-in-coil.js';
import { solidsSuspended } from './rules/stirring/suspension.js';
import { thinBatch } from './rules/stirring/thin-batch.js';
import { stirrerViscosity } from './rules/stirring/viscosity-range.js';
import { stirrerMaterial } from './rules/stirring/wetted-suits.js';
import { externalPressure } from './rules/strength/external-pressure.js';
import { partPressure } from './rules/strength/part-pressure.js';
import { partTemperature } from './rules/strength/part-temperature.js';
import { pressureTest } from './rules/strength/pressure-test.js';
import { ratingAtTemperature, declaredPressure } from './rules/strength/rating-at-temperature.js';
import { specialVesselRule } from './rules/strength/special.js';
import { specialCoverRule, specialShaftRule } from './rules/strength/special-part.js';
import { vapourKnown } from './rules/strength/vapour-known.js';
import { vacuumProof } from './rules/strength/vacuum.js';
import { controlLoops } from './rules/supply/control-loops.js';
import { partOfFamily } from './rules/supply/family.js';
import { frameBore } from './rules/supply/frame-bore.js';
import { frameMass } from './rules/supply/frame-mass.js';
import { frameSets } from './rules/supply/frame-sets.js';
import { gasFlow } from './rules/supply/gas-flow.js';
import { gasInletNeeded } from './rules/supply/gas-inlet.js';
import { gasKind } from './rules/supply/gas-kind.js';
import { gasPressure } from './rules/supply/gas-pressure.js';
import { itemLife } from './rules/supply/item-life.js';
import { uptakeRecorded } from './rules/supply/uptake-recorded.js';
import { hotFill } from './rules/volume/hot-fill.js';
import { neverLiquidFull } from './rules/volume/liquid-full.js';
import { smallestBatch } from './rules/volume/smallest-batch.js';
import { vesselSize } from './rules/volume/vessel-size.js';
import { bottomOutletWish } from './rules/wish/bottom-outlet.js';
import { constructionWish } from './rules/wish/construction.js';
import { familyWish } from './rules/wish/family.js';
import { impellerWish } from './rules/wish/impeller.js';
import { materialWish } from './rules/wish/material.js';
import { viewInside } from './rules/wish/view-inside.js';

/** Every rule in force, in the order in which results of equal urgency are shown. */
export const ruleBook: readonly Rule[] = [
  hotFill,
  neverLiquidFull,
  smallestBatch,
  vesselSize,
  externalPressure,
  partPressure,
  partTemperature,
  pressureTest,
  ratingAtTemperature,
  declaredPressure,
  specialVesselRule,
  specialCoverRule,
  specialShaftRule,
  vacuumProof,
  vapourKnown,
  boltLoad,
  closureBore,
  coverBore,
  decompression,
  endForce,
  hotContents,
  interlock,
  openingTime,
  sealBore,
  carrierInHydrogen,
  corrosion,
  mediumOnFile,
  coverMaterial,
  gasSupplyMaterial,
  noMetal,
  vesselMaterial,
  coverLiftCapacity,
  vesselLiftCapacity,
  handMass,
  headroom,
  internalsClear,
  floorClear,
  quickClosureNeedsLift,
  liftStroke,
  tilt,
  bafflesFit,
  bushing,
  couplingTemperature,
  couplingTorque,
  shaftCriticalSpeed,
  driveTorque,
  drivePower,
  lowestSpeed,
  couplingAtSlowest,
  driveAtSlowest,
  shaftLength,
  stirrerOnShaft,
  shaftInCoupling,
  driveSpeed,
  couplingSpeed,
  stirrerSpeed,
  stirrerFits,
  stirrerInCoil,
  solidsSuspended,
  thinBatch,
  stirrerViscosity,
  stirrerMaterial,
  circulatorSpan,
  coilFits,
  coldSource,
  coolingNeeded,
  fluidSpan,
  heatSource,
  heatUpByMantle,
  heatUpByJacket,
  heaterFits,
  heaterTemperature,
  pumpPressure,
  heatRemoval,
  thermalShock,
  burstBelowPs,
  burstBelowParts,
  reliefGasArea,
  gasLimitNeeded,
  gaugeRange,
  operatingRatio,
  runaway,
  vacuumSupport,
  ventLineNeeded,
  ventLoad,
  staticCharge,
  hotSurface,
  ignitionKnown,
  areaMarking,
  limitBelowTs,
  limiterNeeded,
  shieldNeeded,
  bottomValveFits,
  gasTubeReach,
  samplingTubeReach,
  coverPorts,
  thermowellReach,
  samplingWish,
  dosingWish,
  condenserWish,
  basketWish,
  probeWish,
  controlLoops,
  partOfFamily,
  frameBore,
  frameMass,
  frameSets,
  gasFlow,
  gasInletNeeded,
  gasKind,
  gasPressure,
  uptakeRecorded,
  bottomOutletWish,
  constructionWish,
  familyWish,
  impellerWish,
  materialWish,
  viewInside,
  certificatesWish,
  qualificationWish,
  coilHazards,
  explosiveMixture,
  fluidGroupOfVapour,
  glassUnderGas,
  hotOutside,
  hydrogenService,
  inertingCaution,
  insideZone,
  liningPermeation,
  oxygenService,
  toxicGas,
  adiabaticRiseAdvice,
  coolDown,
  cutOffs,
  machineryLaw,
  explosionLaw,
  electricalLaw,
  discOrder,
  exportLicence,
  gasIntoLiquid,
  gasReservoir,
  heatUpAdvice,
  highestSpeedAdvice,
  itemLife,
  reliefAreas,
  removalByFilms,
  controlSignals,
  stirringState,
  tighteningAdvice,
  totalPressureAdvice,
  upkeep,
  uptakeLimitAdvice,
  utilities,
];
