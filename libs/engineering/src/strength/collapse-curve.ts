import curves from './collapse-curves.json' with { type: 'json' };

export type ShellKind = 'cylinder' | 'dishedEnd';

/**
 * Lower bound collapse pressure over yield pressure, P_r / P_y, from P_m / P_y, linear between the points and
 * constant beyond the last.
 *
 * @param ratio P_m / P_y [-], ≥ 0
 * @returns P_r / P_y [-]
 * @source en-13445-3:2021 table 8.5-5 (points in collapse-curves.json with their source)
 */
export const collapseRatio = (kind: ShellKind, ratio: number): number => {
  const { elasticOverYield: x, collapseOverYield: y } = curves[kind];
  const after = x.findIndex((point) => point >= ratio);
  if (after < 0) return y.at(-1) ?? 0;
  if (after === 0) return y[0] ?? 0;
  const [x0 = 0, x1 = 1, y0 = 0, y1 = 0] = [x[after - 1], x[after], y[after - 1], y[after]];
  return y0 + ((y1 - y0) * (ratio - x0)) / (x1 - x0);
};
