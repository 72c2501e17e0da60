'use client';

import { useEffect, useState } from 'react';

/** Seconds since something began, counted while it is shown. */
function useSeconds(): number {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => setSeconds((s) => s + 1), 1000);
    return () => clearInterval(timer);
  }, []);
  return seconds;
}

const width = 420;
const ticks = 23;

/** Seconds from one stroke of the scale to the next: more, the longer it takes, so that the end is never reached. */
const secondsAStroke = (seconds: number): number => {
  let stroke = 1;
  while (seconds >= stroke * (ticks - 1)) stroke *= 2;
  return stroke;
};

export interface WorkingProps {
  /** What is under way, as a sentence. */
  readonly text: string;
  readonly onStop?: (() => void) | undefined;
  /** How much of it is done, from 0 to 1, where that is known. */
  readonly share?: number | undefined;
}

/** Work under way on a scale: how much is done, or the seconds since it began where nothing else would be true. */
export function Working({ text, onStop, share }: WorkingProps) {
  const seconds = useSeconds();
  const step = (width - 2) / (ticks - 1);
  const strokes = share === undefined ? seconds / secondsAStroke(seconds) : share * (ticks - 1);
  return (
    <div role="status" className="py-2">
      <svg className="block w-full max-w-[420px]" viewBox={`0 0 ${String(width)} 24`} aria-hidden="true">
        <path d={`M0 20H${String(width)}`} stroke="var(--hair)" />
        {Array.from({ length: ticks }, (_, i) => (
          <path
            key={i}
            d={`M${String(1 + i * step)} ${i % 5 === 0 ? '11' : '15'}V20`}
            stroke={i <= strokes ? 'var(--ink)' : 'var(--rule)'}
          />
        ))}
        <path d={`M0 20H${String(1 + strokes * step)}`} stroke="var(--ink)" strokeWidth="3" />
      </svg>
      <p className="lab mt-1 flex items-center gap-3">
        <span>
          {text} {seconds > 1 && <span aria-hidden="true">{seconds}&#8201;s</span>}
        </span>
        {onStop !== undefined && (
          <button type="button" className="btn btn-sm" onClick={onStop}>
            Stop
          </button>
        )}
      </p>
    </div>
  );
}
