/**
 * A lumped body whose temperature follows C dT/dt = min(P, G_m (T_m − T)) − G_l (T − T_a), heated from below T_m.
 * Conductances [W/K], power [W], heat capacity [J/K], temperatures [K].
 */
export interface HeatedBody {
  readonly capacityJPerK: number;
  readonly lossWPerK: number;
  readonly ambientTemperatureK: number;
  /** Highest power of heater or circulator; absent where the medium has power enough. */
  readonly powerW?: number | undefined;
  /** U A and temperature of the medium; absent where the heater is in direct contact. */
  readonly transfer?: { readonly conductanceWPerK: number; readonly mediumTemperatureK: number } | undefined;
}

/** Time from T1 to T2 where C dT/dt = a − b T: closed form. Infinite where T2 is not reached. */
const linearTime = (
  { capacityJPerK, a, b }: { readonly capacityJPerK: number; readonly a: number; readonly b: number },
  from: number,
  to: number,
): number => {
  const first = a - b * from;
  const second = a - b * to;
  if (to <= from) return 0;
  if (first <= 0 || second <= 0) return Infinity;
  const change = (first - second) / second;
  return b === 0 || change < 1e-9
    ? (capacityJPerK * (to - from)) / second
    : (capacityJPerK / b) * Math.log1p(change);
};

/** Where heat transfer takes over from the power as the limit [K]. */
const takeover = ({ powerW, transfer }: HeatedBody): number => {
  if (transfer === undefined) return Infinity;
  if (powerW === undefined) return -Infinity;
  return transfer.mediumTemperatureK - powerW / transfer.conductanceWPerK;
};

/** Heat that reaches the body at a temperature, after its losses [W]. */
export const netHeat = (body: HeatedBody, temperatureK: number): number => {
  const power = body.powerW ?? Infinity;
  const transferred =
    body.transfer === undefined
      ? Infinity
      : body.transfer.conductanceWPerK * (body.transfer.mediumTemperatureK - temperatureK);
  return Math.min(power, transferred) - body.lossWPerK * (temperatureK - body.ambientTemperatureK);
};

/**
 * Time to bring a lumped body from one temperature to a higher one, in two closed pieces: first limited by power, then by
 * heat transfer. Infinite where the end is not reached.
 */
export const heatingTime = (body: HeatedBody, from: number, to: number): number => {
  const { capacityJPerK, lossWPerK, ambientTemperatureK, powerW, transfer } = body;
  const change = Math.min(Math.max(takeover(body), from), to);
  const byPower = linearTime(
    { capacityJPerK, a: (powerW ?? 0) + lossWPerK * ambientTemperatureK, b: lossWPerK },
    from,
    change,
  );
  if (transfer === undefined) return byPower;
  const { conductanceWPerK, mediumTemperatureK } = transfer;
  const byTransfer = linearTime(
    {
      capacityJPerK,
      a: conductanceWPerK * mediumTemperatureK + lossWPerK * ambientTemperatureK,
      b: conductanceWPerK + lossWPerK,
    },
    change,
    to,
  );
  return byPower + byTransfer;
};

/** What limits the heating at its start and at its end. */
export const limitedBy = (
  body: HeatedBody,
  from: number,
  to: number,
): 'heater power' | 'heat transfer' | 'both' => {
  const change = takeover(body);
  if (change >= to) return 'heater power';
  return change <= from ? 'heat transfer' : 'both';
};
