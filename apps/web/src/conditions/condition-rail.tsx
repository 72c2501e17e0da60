import { temperatureFromKelvin, units } from '@flangewise/quantities';
import { statusClass } from '../look/status-mark';
import type { RailCondition } from './conditions-of-inquiry';

const width = 148;
const middle = 9;
/** A limit further off than this many times the highest value is named, not drawn. */
const drawnWithin = 4 / 3;

const celsius = units.temperature.find(({ code }) => code === 'Cel');

/** Temperatures start at 0 °C or lower; everything else at zero. */
const plain = (si: number, { kind }: RailCondition): number =>
  kind === 'temperature' && celsius !== undefined ? temperatureFromKelvin(si, celsius) : si;

/** Position of a value on the line. */
const scaleOf = (condition: RailCondition): ((si: number) => number) => {
  const { lowest, usual, highest, limit, isWide } = condition;
  const values = [lowest, usual, highest].filter((one) => one !== undefined);
  const top = Math.max(...values.map((one) => plain(one, condition)));
  const near = limit === undefined ? undefined : plain(limit.si, condition);
  const end = near !== undefined && near <= drawnWithin * top ? Math.max(top, near) / 0.78 : top / 0.75;
  if (isWide) {
    const start = Math.log(Math.min(...values) / 3);
    const stop = Math.log(end * 1.4);
    return (si) => ((Math.log(si) - start) / (stop - start)) * width;
  }
  const start = Math.min(0, ...values.map((one) => plain(one, condition) * 1.15));
  return (si) => ((plain(si, condition) - start) / (end - start || 1)) * width;
};

const isDrawn = (condition: RailCondition): boolean => {
  const { limit, highest, usual } = condition;
  const top = highest ?? usual;
  return (
    limit !== undefined &&
    top !== undefined &&
    plain(limit.si, condition) <= drawnWithin * plain(top, condition)
  );
};

/** Dimension line from lowest to highest, ring at usual, hatched stroke at the first limit. */
export function ConditionRail({ condition }: { readonly condition: RailCondition }) {
  const { lowest, usual, highest, limit } = condition;
  if (lowest === undefined && usual === undefined && highest === undefined)
    return (
      <svg className="block" width={width} height="18" aria-hidden="true">
        <path d={`M0 ${String(middle)}H${String(width)}`} stroke="var(--rule)" strokeDasharray="3 3" />
      </svg>
    );
  const at = scaleOf(condition);
  const [from, to] = [
    lowest === undefined ? undefined : at(lowest),
    highest === undefined ? undefined : at(highest),
  ];
  const ring = usual ?? (from === undefined ? highest : undefined);
  const stop = limit !== undefined && isDrawn(condition) ? at(limit.si) : undefined;
  return (
    <svg
      className="block"
      width={width}
      height="18"
      viewBox={`0 0 ${String(width)} 18`}
      overflow="visible"
      aria-hidden="true"
    >
      <path d={`M0 ${String(middle)}H${String(width)}`} stroke="var(--hair)" />
      {from !== undefined && to !== undefined && to > from && (
        <>
          <path d={`M${String(from)} 4V14M${String(to)} 4V14`} stroke="var(--given)" strokeWidth=".9" />
          <path
            d={`M${String(from)} ${String(middle)}H${String(to)}`}
            stroke="var(--given)"
            strokeWidth="1.1"
          />
          {to - from > 16 && (
            <path fill="var(--given)" d={`M${String(from)} 9l7 -2.3v4.6zM${String(to)} 9l-7 -2.3v4.6z`} />
          )}
        </>
      )}
      {ring !== undefined && (
        <circle
          cx={at(ring)}
          cy={middle}
          r="3.1"
          fill="var(--sheet)"
          stroke="var(--given)"
          strokeWidth="1.6"
        />
      )}
      {stop !== undefined && limit !== undefined && (
        <g
          className={statusClass(limit.status)}
          stroke={limit.status === 'met' ? 'var(--ink2)' : 'currentColor'}
        >
          <path d={`M${String(stop)} 1V17`} strokeWidth="2" />
          <path
            d={[17, 12, 7].map((y) => `M${String(stop + 1)} ${String(y)}l4 -4`).join('')}
            strokeWidth=".9"
            fill="none"
          />
        </g>
      )}
    </svg>
  );
}
