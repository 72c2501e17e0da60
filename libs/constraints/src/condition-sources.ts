import type { ConditionName } from './conditions.js';
import type { InquiryStatement } from './statements.js';

/** Endings of the fields of an inquiry from which a condition follows; where nothing stands here, its own name. */
const fieldsOf: Readonly<Partial<Record<ConditionName, readonly string[]>>> = {
  media: ['process.media'],
  gases: ['process.media'],
  pressureMaxPaGauge: ['pressure.highest', 'process.media'],
  vacuum: ['process.vacuum', 'pressure.lowest'],
  temperatureMaxK: ['temperature.highest'],
  temperatureMinK: ['temperature.lowest'],
  batchVolumeM3: ['batchVolume', 'statedVolume'],
  hotVolumeM3: ['batchVolume', 'statedVolume', 'temperature.highest'],
  vesselVolumeM3: ['vesselVolume'],
  fillLimit: ['process.foaming'],
  viscosityMaxPaS: ['viscosity.end', 'viscosity.start'],
  viscosityMinPaS: ['viscosity.start', 'viscosity.end'],
  speedMaxPerS: ['stirringSpeed.highest'],
  speedMinPerS: ['stirringSpeed.lowest'],
  peakHeatW: ['peakUptake'],
  exothermic: ['process.kind', 'process.exothermic'],
  processKind: ['process.kind'],
  supplyPressurePaGauge: ['supplyPressure'],
  marking: ['site.zone', 'process.media'],
  ignitionUnknown: ['site.zone', 'process.media'],
  ceilingHeightM: ['ceilingHeight'],
  freePortsM: ['freePorts'],
  vesselsAtOnce: ['arrangement', 'count'],
};

/** Whether a condition follows from a statement of the inquiry. */
export const followsFrom = (condition: ConditionName, statement: InquiryStatement): boolean =>
  (fieldsOf[condition] ?? [condition]).some(
    (field) =>
      statement.path === field || statement.path.endsWith(`.${field}`) || statement.path.endsWith(field),
  );
