export * from './calculation.js';
export * from './calculation-description.js';
export * from './input-fields.js';
export * from './registry.js';
export * from './fluid/vapour-pressure.js';
export * from './fluid/liquid-density.js';
export * from './fluid/liquid-heat-capacity.js';
export * from './fluid/liquid-viscosity.js';
export * from './fluid/liquid-conductivity.js';
export * from './fluid/heat-of-vaporisation.js';
export * from './fluid/liquid-full-fraction.js';
export * from './fluid/liquid-full-pressure-rise.js';
export * from './fluid/solution-density.js';
export * from './fluid/solution-viscosity.js';
export * from './fluid/fluid-calculations.js';
export * from './gas/compressibility-factor.js';
export * from './gas/dosed-amount.js';
export * from './gas/gas-state.js';
export * from './gas/gas-calculations.js';
export { boltLoad } from './closure/bolt-load.js';
export { boltStressArea } from './closure/bolt-stress-area.js';
export { closureCalculations } from './closure/closure-calculations.js';
export { endForce } from './closure/end-force.js';
export { tighteningTorque } from './closure/tightening-torque.js';
export { canEddyLoss } from './coupling/can-eddy-loss.js';
export { couplingCalculations } from './coupling/coupling-calculations.js';
export { gapTorqueRatio } from './coupling/gap-torque-ratio.js';
export { magnetDerating } from './coupling/magnet-derating.js';
export { dishedEnd } from './geometry/dished-end.js';
export { type EndForm, endForms } from './geometry/end-form.js';
export { geometryCalculations } from './geometry/geometry-calculations.js';
export { cylinderPressure } from './strength/cylinder-pressure.js';
export { cylinderThickness } from './strength/cylinder-thickness.js';
export { conicalPressure } from './strength/conical-pressure.js';
export { conicalThickness } from './strength/conical-thickness.js';
export { ellipsoidalPressure } from './strength/ellipsoidal-pressure.js';
export { ellipsoidalThickness } from './strength/ellipsoidal-thickness.js';
export { externalPressureCylinder } from './strength/external-pressure-cylinder.js';
export { externalPressureEllipsoidalEnd } from './strength/external-pressure-ellipsoidal-end.js';
export { flatEndPressure } from './strength/flat-end-pressure.js';
export { flatEndThickness } from './strength/flat-end-thickness.js';
export { glassTubePressure } from './strength/glass-tube-pressure.js';
export { hydrostaticTest } from './strength/hydrostatic-test.js';
export { type PressureCode, pressureCodes } from './strength/pressure-fields.js';
export { strengthCalculations } from './strength/strength-calculations.js';
export { thickWallStress } from './strength/thick-wall-stress.js';
export { torisphericalPressure } from './strength/torispherical-pressure.js';
export { torisphericalThickness } from './strength/torispherical-thickness.js';
export * from './heat/batch-time-isothermal.js';
export * from './heat/batch-time-flowing-medium.js';
export * from './heat/batch-time-variable-coefficient.js';
export * from './heat/heater-power.js';
export * from './heat/cooling-duty.js';
export * from './heat/coil-area.js';
export * from './heat/coil-inside-coefficient.js';
export * from './heat/coil-outside-coefficient.js';
export * from './heat/overall-coefficient.js';
export * from './heat/adiabatic-rise.js';
export * from './heat/heat-calculations.js';
export { allowableStress, allowableStressCodes } from './materials/allowable-stress.js';
export {
  type Compatibility,
  compatibility,
  compatibilityOf,
  type Exposure,
} from './materials/compatibility.js';
export type { CorrosionField, CorrosionVerdict } from './materials/corrosion-rule.js';
export { designStress } from './materials/design-stress.js';
export { type DesignStress, designStressAt } from './materials/design-stress-at.js';
export { type MaterialGrade, materialGrade, materialGrades } from './materials/material-grade.js';
export {
  elasticModulusAt,
  materialConductivity,
  materialDensity,
  type MaterialFigure,
  materialHeatCapacity,
  meanExpansionTo,
} from './materials/material-properties.js';
export { materialsCalculations } from './materials/materials-calculations.js';
export { media, type Medium, mediumOf } from './materials/medium.js';
export { minimumProofStrength, type Proof, proofStrength } from './materials/proof-strength.js';
export { batchPath } from './stirring/batch-path.js';
export { blendTime } from './stirring/blend-time.js';
export { fullyBaffledPowerNumber } from './stirring/fully-baffled-power-number.js';
export { gassedPowerRatio } from './stirring/gassed-power-ratio.js';
export { highestSpeed } from './stirring/highest-speed.js';
export { impellerPower } from './stirring/impeller-power.js';
export { impellerReynolds } from './stirring/impeller-reynolds.js';
export { impellerTorque } from './stirring/impeller-torque.js';
export { justSuspendedSpeed } from './stirring/just-suspended-speed.js';
export { laminarPower } from './stirring/laminar-power.js';
export { metznerOtto } from './stirring/metzner-otto.js';
export { motorPower } from './stirring/motor-power.js';
export { powerNumber } from './stirring/power-number.js';
export { ribbonLaminarConstant } from './stirring/ribbon-laminar-constant.js';
export { shaftTorque } from './stirring/shaft-torque.js';
export { metznerOttoConstant, zwieteringConstant } from './stirring/shear-and-suspension-constants.js';
export { viscosityRange } from './stirring/viscosity-range.js';
export { stirringCalculations } from './stirring/stirring-calculations.js';
export { type ImpellerType, impellerTypes } from './stirring/impeller-constants.js';
export { vessel } from './geometry/vessel.js';
export { glassThermalShock } from './strength/glass-thermal-shock.js';
export { glassVessel } from './strength/glass-vessel.js';
export { spherePressure } from './strength/sphere-pressure.js';
export { sphereThickness } from './strength/sphere-thickness.js';
export { vesselRating } from './strength/vessel-rating.js';
export type { VesselRatingInputs } from './strength/vessel-rating.js';
export * from './fluid/hot-volume.js';
export * from './fluid/total-pressure.js';
export * from './fluid/charged-pressure.js';
export * from './fluid/mixture.js';
export * from './fluid/properties.js';
export * from './fluid/liquid.js';
export * from './fluid/liquid-estimate.js';
export * from './fluid/liquid-vapour-pressure.js';
export * from './fluid/fluid-data.js';
export { dustSurfaceLimit } from './hazardous-area/dust-surface-limit.js';
export { equipmentCategory } from './hazardous-area/equipment-category.js';
export { gasSurfaceLimit, gasSurfaceLimitK } from './hazardous-area/gas-surface-limit.js';
export { hazardousAreaCalculations } from './hazardous-area/hazardous-area-calculations.js';
export {
  findIgnitionData,
  type GasGroup,
  gasGroups,
  type IgnitionData,
  ignitionData,
} from './hazardous-area/ignition-data.js';
export { ignitionOfSubstance } from './hazardous-area/ignition-of-substance.js';
export {
  gasGroupCovers,
  requiredMarking,
  requiredMarkingFor,
  type RequiredMarking,
} from './hazardous-area/required-marking.js';
export {
  surfaceLimitOfClassK,
  type TemperatureClass,
  temperatureClass,
  temperatureClassCovers,
  temperatureClasses,
  temperatureClassOf,
} from './hazardous-area/temperature-class.js';
export {
  categoryCovers,
  equipmentOfZone,
  type GasZone,
  gasZones,
  type Zone,
  type ZoneEquipment,
  zones,
} from './hazardous-area/zones.js';
export {
  type HandledMass,
  handledMass,
  leastHandledMassKg,
  recommendedHandledMassKg,
} from './lifting/handled-mass.js';
export { liftingCalculations } from './lifting/lifting-calculations.js';
export { type HandCoupling, handCouplings } from './lifting/lifting-multipliers.js';
export { recommendedWeight } from './lifting/recommended-weight.js';
export {
  classifyVessel,
  disputedAdvice,
  highestCategory,
  pedCategories,
  type PedCategory,
  type VesselClass,
  type VesselPoint,
} from './ped/annex-ii-vessels.js';
export { type Conformity, conformityOf, dutiesOf } from './ped/conformity-modules.js';
export { type FluidGroup, fluidGroup, fluidGroupOf } from './ped/fluid-group.js';
export { fluidGroupOfClass, fluidGroupOfHazardClass } from './ped/fluid-group-of-hazard-class.js';
export { type FluidState, fluidState, fluidStateOf } from './ped/fluid-state.js';
export { pedCalculations } from './ped/ped-calculations.js';
export { findSubstanceHazards, type SubstanceHazards, substanceHazards } from './ped/substance-hazards.js';
export { testPressure } from './ped/test-pressure.js';
export {
  type Chamber,
  type ChamberClass,
  type ChamberFluid,
  classifyChamber,
} from './ped/classify-chamber.js';
export { vesselAssessment } from './ped/vessel-assessment.js';
export { vesselCategory } from './ped/vessel-category.js';
export * from './gas/gas-density.js';
export * from './gas/uptake-reservoir.js';
export { burstPressureFromOperating } from './relief/burst-pressure-from-operating.js';
export { burstPressureWindow } from './relief/burst-pressure-window.js';
export { chokedFlowFunction } from './relief/choked-flow-function.js';
export { criticalPressureRatio } from './relief/critical-pressure-ratio.js';
export { discWindow } from './relief/disc-window.js';
export { dischargedArea } from './relief/discharged-area.js';
export { fireHeat } from './relief/fire-heat.js';
export { gasArea } from './relief/gas-area.js';
export { lineFlow } from './relief/line-flow.js';
export { liquidArea } from './relief/liquid-area.js';
export { omegaCriticalRatio } from './relief/omega-critical-ratio.js';
export { regulatorFailedOpenFlow } from './relief/regulator-failed-open-flow.js';
export { standardOrifice } from './relief/standard-orifice.js';
export { steamArea } from './relief/steam-area.js';
export { subsonicFlowFunction } from './relief/subsonic-flow-function.js';
export { twoPhaseArea } from './relief/two-phase-area.js';
export { ventBackPressure } from './relief/vent-back-pressure.js';
export { ventThrust } from './relief/vent-thrust.js';
export { viscosityCorrection } from './relief/viscosity-correction.js';
export { worstInflow } from './relief/worst-inflow.js';
export { reliefCalculations } from './relief/relief-calculations.js';
export { discCoefficient } from './relief/relief-fields.js';
export * from './fluid/boiling-temperature.js';
export * from './heat/heat-up.js';
export * from './heat/circulator-curve.js';
export * from './heat/heat-up-curve.js';
export * from './heat/removable-heat.js';
export * from './heat/medium-flow-for-duty.js';
export * from './heat/gas-uptake-limit.js';
export * from './heat/ambient-loss.js';
export * from './heat/jacket-film.js';
export * from './heat/vessel-film.js';
export * from './heat/overall-coefficient-band.js';
export * from './heat/typical-coefficient.js';
export * from './heat/heat-transfer-fluid.js';
export * from './field-table.js';
export * from './handbook.js';
export * from './sources.js';
export * from './citation-text.js';
export { boltClasses, boltProofStress } from './closure/bolt-proof-stress.js';
export { boltedCover } from './closure/bolted-cover.js';
export { gasketFactors, gasketKinds } from './closure/gasket-factors.js';
export { type MetricThread, metricThreads } from './closure/metric-thread.js';
export { ratedForce } from './closure/rated-force.js';
export { deratedTorque, magnetKinds } from './coupling/derated-torque.js';
export { shaftCriticalSpeed } from './coupling/shaft-critical-speed.js';
export { centreOfGravity } from './geometry/centre-of-gravity.js';
export { headroom } from './geometry/headroom.js';
export { vesselCentreOfGravity } from './geometry/vessel-centre-of-gravity.js';
export { specialCalculations } from './special/special-calculations.js';
export { specialVessel } from './special/special-vessel.js';
export { flatCover } from './strength/flat-cover.js';
export { requiredWall } from './strength/required-wall.js';
export { vesselExternalRating } from './strength/vessel-external-rating.js';
export { openingPressure } from './strength/opening-pressure.js';
export { assemblyPressure } from './strength/assembly-pressure.js';
export { ratingCurve } from './strength/rating-curve.js';
export { coolingWater } from './utilities/cooling-water.js';
export { electricalLoad } from './utilities/electrical-load.js';
export { floorLoad } from './utilities/floor-load.js';
export { gasConsumption } from './utilities/gas-consumption.js';
export { roomHeat } from './utilities/room-heat.js';
export { utilitiesCalculations } from './utilities/utilities-calculations.js';
export { assembly } from './ped/assembly.js';
export { conformityCalculations } from './conformity/conformity-calculations.js';
export { directives } from './conformity/directives.js';
export { documents, documentWishes } from './conformity/documents.js';
export { greatBritain } from './conformity/great-britain.js';
export { unitedStates } from './conformity/united-states.js';
