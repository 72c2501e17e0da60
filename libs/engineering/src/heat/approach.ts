import { type Outcome, succeed } from '@flangewise/model';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';

interface Course {
  readonly startTemperatureK: number;
  readonly endTemperatureK: number;
  readonly mediumTemperatureK: number;
}

/**
 * ln((T_m − T1)/(T_m − T2)) of a batch that approaches a medium, heated or cooled. Zero where start and end agree.
 * @error CALC_OUT_OF_RANGE where the end lies not between start and medium: it is never reached
 */
export const approachLogarithm = ({
  startTemperatureK,
  endTemperatureK,
  mediumTemperatureK,
}: Course): Outcome<number> => {
  const first = mediumTemperatureK - startTemperatureK;
  const second = mediumTemperatureK - endTemperatureK;
  if (startTemperatureK === endTemperatureK) return succeed(0);
  const reached = first > 0 ? second > 0 && second < first : second < 0 && second > first;
  return reached
    ? succeed(Math.log(first / second))
    : outOfRange({
        field: 'endTemperatureK',
        given: endTemperatureK,
        unit: 'K',
        allowed: `between startTemperatureK (${shown(startTemperatureK)} K) and the medium (${shown(mediumTemperatureK)} K), which is approached and never reached`,
      });
};
