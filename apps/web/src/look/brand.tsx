/** A flange in section, and the name. */
export function Brand() {
  return (
    <span className="flex items-center gap-[9px] text-[15px] leading-[20px] font-[640] tracking-[-0.005em] [font-stretch:108%]">
      <svg viewBox="0 0 22 22" width="22" height="22" aria-hidden="true">
        <g fill="none" stroke="currentColor">
          <path strokeWidth="1.5" d="M1 8H5V2.2H10V19.8H5V14H1M21 8H17V2.2H12V19.8H17V14H21" />
          <path
            strokeWidth=".9"
            d="M5 6.5L9.5 2M5 10.5L10 5.5M5 14.5L10 9.5M5.5 18.5L10 14M17 6.5L12.5 2M17 10.5L12 5.5M17 14.5L12 9.5M16.5 18.5L12 14"
          />
        </g>
        <circle cx="11" cy="6" r="1.5" fill="currentColor" />
        <circle cx="11" cy="16" r="1.5" fill="currentColor" />
      </svg>
      <span className="max-[420px]:sr-only">Flangewise</span>
    </span>
  );
}
