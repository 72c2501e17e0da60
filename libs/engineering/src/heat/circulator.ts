/** Heating and cooling power of a circulator at a temperature of its medium [K, W]. */
export interface CirculatorPower {
  readonly temperatureK: number;
  readonly heatingW: number;
  readonly coolingW: number;
}

/** A circulator with its medium [W, W/K, J/K, K]. */
export interface Circulator {
  readonly powers: readonly CirculatorPower[];
  /** Heat that the pump leaves in the medium. */
  readonly pumpW: number;
  /** Capacity of all medium in bath, hoses and jacket. */
  readonly capacityJPerK: number;
  readonly lossWPerK: number;
  readonly lowestK: number;
  readonly highestK: number;
  /** Time constant with which the controller brings the medium to its set point. */
  readonly timeConstantS: number;
}

/** A batch with its vessel, in heat exchange with the medium. */
export interface TemperedBatch {
  readonly capacityJPerK: number;
  readonly lossWPerK: number;
  readonly reactionW: number;
  /** ε W c between medium and batch. */
  readonly exchangeWPerK: number;
  readonly ambientK: number;
  readonly targetK: number;
  /** Largest difference between medium and batch. */
  readonly differenceK: number;
}

/** How far the medium's set point leads the batch, over what the batch lacks: usual for cascade control. */
const cascadeGain = 10;

const clamped = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** Power at a temperature, linear between the points of the table, its ends holding beyond them. */
export const powerAt = (
  powers: readonly CirculatorPower[],
  temperatureK: number,
): Omit<CirculatorPower, 'temperatureK'> => {
  const above = powers.findIndex((point) => point.temperatureK >= temperatureK);
  const upper = powers[above === -1 ? powers.length - 1 : above];
  const lower = above > 0 ? powers[above - 1] : upper;
  if (upper === undefined || lower === undefined) return { heatingW: 0, coolingW: 0 };
  const span = upper.temperatureK - lower.temperatureK;
  const share = span === 0 ? 0 : (temperatureK - lower.temperatureK) / span;
  return {
    heatingW: lower.heatingW + share * (upper.heatingW - lower.heatingW),
    coolingW: lower.coolingW + share * (upper.coolingW - lower.coolingW),
  };
};

/**
 * Set point of the medium: what holds the target against losses and reaction, and a lead over what the batch still lacks;
 * within the range of the circulator, and near the batch where the difference is limited.
 */
export const mediumSetPoint = (
  { lowestK, highestK }: Circulator,
  batch: TemperedBatch,
  batchK: number,
): number => {
  const { targetK, exchangeWPerK, lossWPerK, ambientK, reactionW, differenceK } = batch;
  const holding = targetK + (lossWPerK * (targetK - ambientK) - reactionW) / exchangeWPerK;
  const wanted = clamped(holding + cascadeGain * (targetK - batchK), lowestK, highestK);
  return clamped(wanted, batchK - differenceK, batchK + differenceK);
};

/** Power of the circulator into its medium: what follows the set point, as far as heater and cooler can [W]. */
export const circulatorPower = (
  circulator: Circulator,
  batch: TemperedBatch,
  [batchK, mediumK]: readonly [number, number],
): number => {
  const { capacityJPerK, lossWPerK, timeConstantS, pumpW, powers } = circulator;
  const given = batch.exchangeWPerK * (mediumK - batchK) + lossWPerK * (mediumK - batch.ambientK) - pumpW;
  const change = mediumSetPoint(circulator, batch, batchK) - mediumK;
  const { heatingW, coolingW } = powerAt(powers, mediumK);
  return clamped(given + (capacityJPerK * change) / timeConstantS, -coolingW, heatingW);
};

/** Rates of change of batch and medium [K/s]. */
export const temperingRates = (
  circulator: Circulator,
  batch: TemperedBatch,
  [batchK, mediumK]: readonly [number, number],
): [number, number] => {
  const exchanged = batch.exchangeWPerK * (mediumK - batchK);
  const power = circulatorPower(circulator, batch, [batchK, mediumK]);
  return [
    (exchanged - batch.lossWPerK * (batchK - batch.ambientK) + batch.reactionW) / batch.capacityJPerK,
    (power + circulator.pumpW - exchanged - circulator.lossWPerK * (mediumK - batch.ambientK)) /
      circulator.capacityJPerK,
  ];
};
