/** A length in millimetres as names carry it: `117`, `2.5`. */
export const mm = (metres: number): string => String(Number((metres * 1000).toPrecision(4)));

/** A temperature in °C with a true minus. */
export const degrees = (celsius: number): string => String(celsius).replace('-', '−');

export const kelvin = (celsius: number): number => Number((celsius + 273.15).toFixed(2));

export const pascal = (bar: number): number => Math.round(bar * 1e5);

/** `370 W`, `1.5 kW`. */
export const power = (watt: number): string =>
  watt < 1000 ? `${String(watt)} W` : `${String(watt / 1000)} kW`;

export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words in a row with commas; empty ones are left out. */
export const listed = (...words: readonly (string | false | undefined)[]): string =>
  words.filter((word) => word !== '' && word !== false && word !== undefined).join(', ');

/** A stated mass: rounded up to two significant digits, the safe side for lifts and frames [kg]. */
export const statedMass = (massKg: number): number => {
  if (massKg === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(massKg)) - 1);
  return Number((Math.ceil(massKg / step - 1e-9) * step).toPrecision(2));
};
