/** Normal atmospheric pressure, the zero of gauge pressure [Pa] (ISO 2533). */
export const normalAtmospherePa = 101_325;

export const gaugeToAbsolute = (pressurePaGauge: number): number => pressurePaGauge + normalAtmospherePa;

export const absoluteToGauge = (pressurePaAbs: number): number => pressurePaAbs - normalAtmospherePa;
