import Qty from 'js-quantities';

/** What a number measures. A temperature on a scale and a temperature difference are two kinds. */
export type Kind =
  | 'amountFlow'
  | 'area'
  | 'density'
  | 'force'
  | 'length'
  | 'mass'
  | 'massFlow'
  | 'molarConcentration'
  | 'molarEnergy'
  | 'power'
  | 'pressure'
  | 'ratio'
  | 'speed'
  | 'temperature'
  | 'temperatureDifference'
  | 'time'
  | 'torque'
  | 'viscosity'
  | 'volume'
  | 'volumeFlow';

export interface Unit {
  /** UCUM code, the name in data. */
  readonly code: string;
  /** How it is printed. */
  readonly label: string;
  /** What people type, besides code and label; compared without case and blanks. */
  readonly typed: readonly string[];
  /** Its definition in the unit library's words; spelled out where the library keeps too few digits (NIST SP 811). */
  readonly definition: string;
}

type UnitRow = [code: string, label: string, definition: string, ...typed: string[]];

const unit = (...[code, label, definition, ...typed]: UnitRow): Unit => ({ code, label, definition, typed });

/** The first unit of each kind is the SI unit in which the libraries compute. */
export const units: Readonly<Record<Kind, readonly [Unit, ...Unit[]]>> = {
  pressure: [
    unit('Pa', 'Pa', 'Pa'),
    unit('bar', 'bar', 'bar', 'bars'),
    unit('mbar', 'mbar', 'mbar'),
    unit('kPa', 'kPa', 'kPa'),
    unit('MPa', 'MPa', 'MPa'),
    unit('[psi]', 'psi', '6894.757293168361 Pa', 'lb/in2', 'lbf/in2'),
    unit('atm', 'atm', 'atm'),
    unit('mm[Hg]', 'mmHg', 'mmHg', 'torr'),
  ],
  temperature: [
    unit('K', 'K', 'tempK', 'kelvin'),
    unit('Cel', '°C', 'tempC', 'C', 'degC', 'celsius', 'grad c'),
    unit('[degF]', '°F', 'tempF', 'F', 'degF', 'fahrenheit'),
  ],
  temperatureDifference: [
    unit('K', 'K', 'degK', 'kelvin'),
    unit('Cel', '°C', 'degC', 'C', 'degC'),
    unit('[degF]', '°F', 'degF', 'F', 'degF'),
  ],
  volume: [
    unit('m3', 'm³', 'm^3', 'm^3', 'cbm'),
    unit('L', 'L', 'l', 'liter', 'litre', 'liters', 'litres'),
    unit('mL', 'mL', 'ml', 'cc', 'cm3', 'cm³'),
    unit('[gal_us]', 'US gal', 'gal', 'gal', 'gallon', 'gallons', 'usgal'),
  ],
  length: [
    unit('m', 'm', 'm', 'meter', 'metre'),
    unit('mm', 'mm', 'mm'),
    unit('cm', 'cm', 'cm'),
    unit('um', 'µm', 'um', 'μm', 'micron'),
    unit('[in_i]', 'in', 'in', 'inch', 'inches', '"'),
    unit('[ft_i]', 'ft', 'ft', 'foot', 'feet'),
  ],
  area: [
    unit('m2', 'm²', 'm^2', 'm^2'),
    unit('mm2', 'mm²', 'mm^2', 'mm^2'),
    unit('cm2', 'cm²', 'cm^2', 'cm^2'),
  ],
  mass: [
    unit('kg', 'kg', 'kg'),
    unit('g', 'g', 'g'),
    unit('t', 't', 'tonne'),
    unit('[lb_av]', 'lb', 'lb', 'lbs'),
  ],
  density: [
    unit('kg/m3', 'kg/m³', 'kg/m^3', 'kg/m^3'),
    unit('g/cm3', 'g/cm³', 'g/cm^3', 'g/cm^3', 'g/ml', 'kg/l'),
  ],
  viscosity: [
    unit('Pa.s', 'Pa·s', 'Pa*s', 'Pas', 'Pa*s', 'Pa s'),
    unit('mPa.s', 'mPa·s', 'mPa*s', 'mPas', 'mPa*s', 'mPa s'),
    unit('cP', 'cP', 'cP', 'centipoise', 'cps'),
    unit('P', 'P', 'poise', 'poise'),
  ],
  torque: [
    unit('N.m', 'N·m', 'N*m', 'Nm', 'N*m'),
    unit('N.cm', 'N·cm', 'N*cm', 'Ncm', 'N*cm'),
    unit('[lbf_av].[in_i]', 'lbf·in', '0.1129848290276167 N*m', 'lbf-in', 'in-lb', 'inlb'),
  ],
  force: [unit('N', 'N', 'N'), unit('kN', 'kN', 'kN'), unit('[lbf_av]', 'lbf', '4.4482216152605 N')],
  power: [unit('W', 'W', 'W', 'watt'), unit('kW', 'kW', 'kW'), unit('[HP]', 'hp', 'hp')],
  speed: [
    unit('/s', '1/s', '1/s', 's-1', 's^-1', 's⁻¹', 'rps', 'Hz'),
    unit('/min', '1/min', '1/min', 'rpm', 'min-1', 'min^-1', 'min⁻¹', 'u/min', 'r/min'),
  ],
  time: [
    unit('s', 's', 's', 'sec'),
    unit('min', 'min', 'min', 'minutes'),
    unit('h', 'h', 'h', 'hour', 'hours'),
    unit('d', 'd', 'day', 'days', 'day'),
  ],
  massFlow: [unit('kg/s', 'kg/s', 'kg/s'), unit('kg/h', 'kg/h', 'kg/h'), unit('g/min', 'g/min', 'g/min')],
  volumeFlow: [
    unit('m3/s', 'm³/s', 'm^3/s'),
    unit('L/min', 'L/min', 'l/min'),
    unit('m3/h', 'm³/h', 'm^3/h'),
    unit('mL/min', 'mL/min', 'ml/min'),
  ],
  amountFlow: [
    unit('mol/s', 'mol/s', 'mol/s'),
    unit('mol/min', 'mol/min', 'mol/min'),
    unit('mol/h', 'mol/h', 'mol/h'),
    unit('mmol/min', 'mmol/min', 'mmol/min'),
  ],
  molarEnergy: [
    unit('J/mol', 'J/mol', 'J/mol'),
    unit('kJ/mol', 'kJ/mol', 'kJ/mol'),
    unit('kcal/mol', 'kcal/mol', 'kcal/mol'),
  ],
  molarConcentration: [unit('mol/m3', 'mol/m³', 'mol/m^3'), unit('mol/L', 'mol/L', 'mol/l', 'M')],
  ratio: [unit('1', '', ''), unit('%', '%', '%', 'percent', 'wt%', '% w/w')],
};

const simplified = (typed: string): string =>
  typed.replace(/\s+/g, '').replace(/·/g, '').replace(/\*/g, '').replace(/μ/g, 'µ');

/** The unit of a kind that somebody typed; case counts only where it would otherwise be ambiguous (mPa, MPa). */
export const findUnit = (kind: Kind, typed: string): Unit | undefined => {
  const wanted = simplified(typed);
  const names = (u: Unit): string[] => [u.code, u.label, ...u.typed].map(simplified);
  const exact = units[kind].find((u) => names(u).includes(wanted));
  if (exact !== undefined) return exact;
  // A leading m or M is milli or mega: there the case decides.
  const loose = units[kind].filter((u) =>
    names(u).some((n) => n.toLowerCase() === wanted.toLowerCase() && !(/^m/i.test(n) && n[0] !== wanted[0])),
  );
  return loose.length === 1 ? loose[0] : undefined;
};

/** Removes binary noise (1.0000000000000002): fifteen digits are more than anybody gives. */
const clean = (value: number): number => Number(value.toPrecision(15));

const factors = new Map<string, number>();

/** Factor from a unit to the SI unit of its kind; for temperatures on a scale see `temperatureToKelvin`. */
export const factorToSi = (kind: Exclude<Kind, 'temperature'>, of: Unit): number => {
  const key = `${kind} ${of.code}`;
  const known = factors.get(key);
  if (known !== undefined) return known;
  const si = units[kind][0];
  const factor =
    kind === 'ratio' ? (of.code === '%' ? 0.01 : 1) : Qty(of.definition).to(si.definition).scalar;
  factors.set(key, factor);
  return factor;
};

const kelvinAt0Celsius = 273.15;
const fahrenheitAt0Celsius = 32;

export const temperatureToKelvin = (value: number, of: Unit): number => {
  if (of.code === 'Cel') return clean(value + kelvinAt0Celsius);
  if (of.code === '[degF]') return clean((value - fahrenheitAt0Celsius) / 1.8 + kelvinAt0Celsius);
  return value;
};

export const temperatureFromKelvin = (kelvin: number, to: Unit): number => {
  if (to.code === 'Cel') return clean(kelvin - kelvinAt0Celsius);
  if (to.code === '[degF]') return clean((kelvin - kelvinAt0Celsius) * 1.8 + fahrenheitAt0Celsius);
  return kelvin;
};

export const toSi = (kind: Kind, value: number, of: Unit): number =>
  kind === 'temperature' ? temperatureToKelvin(value, of) : clean(value * factorToSi(kind, of));

export const fromSi = (kind: Kind, value: number, to: Unit): number =>
  kind === 'temperature' ? temperatureFromKelvin(value, to) : clean(value / factorToSi(kind, to));
