import preferred from './preferred-pressures.json' with { type: 'json' };

/** Pressures in bar (gauge) that parts of the range are rated at. */
export const preferredPressures: readonly number[] = preferred.pressures;

/**
 * The pressure that a part is sold at: the highest preferred one that the calculation carries.
 *
 * @param carriedPaGauge computed permissible pressure [Pa]
 * @param atMostBar      end of the range [bar]
 * @returns [bar], undefined below the lowest preferred pressure
 */
export const preferredBelow = (carriedPaGauge: number, atMostBar = Infinity): number | undefined =>
  preferredPressures.findLast((bar) => bar <= atMostBar && bar * 1e5 <= carriedPaGauge);
