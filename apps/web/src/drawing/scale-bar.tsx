/** Lengths in millimetres that a scale bar may have. */
const lengths = [10, 20, 50, 100, 200, 500, 1000, 2000];

/** A length of the object as it appears in the drawing. */
export function ScaleBar({ scale }: { readonly scale: number }) {
  const length = lengths.find((one) => one * scale >= 60) ?? 2000;
  const width = length * scale;
  return (
    <svg width={width + 56} height="14" role="img" aria-label={`Scale bar, ${String(length)} mm`}>
      <path
        d={`M1 7H${String(width + 1)}M1 3V11M${String(width / 2 + 1)} 4V10M${String(width + 1)} 3V11`}
        stroke="var(--ink)"
        fill="none"
      />
      <text x={width + 7} y="11" fontSize="11" fill="var(--ink2)">
        {length}&#8201;mm
      </text>
    </svg>
  );
}
