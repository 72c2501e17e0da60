'use client';

import * as Tabs from '@radix-ui/react-tabs';

export interface SetTabsProps {
  readonly names: readonly string[];
  readonly current: number;
  readonly onChange: (set: number) => void;
  /** "mounted one at a time" or "working at once". */
  readonly note: string;
}

/** The vessel sets that share one frame. */
export function SetTabs({ names, current, onChange, note }: SetTabsProps) {
  return (
    <Tabs.Root
      value={String(current)}
      onValueChange={(value) => onChange(Number(value))}
      className="flex flex-wrap items-center gap-x-4 border-b border-hair px-3"
    >
      <Tabs.List aria-label="Vessel sets on this frame" className="flex">
        {names.map((name, set) => (
          <Tabs.Trigger
            key={`${name} ${String(set)}`}
            value={String(set)}
            aria-controls={undefined}
            className="relative min-h-9 cursor-pointer px-3 data-[state=active]:font-semibold data-[state=active]:after:absolute data-[state=active]:after:inset-x-3 data-[state=active]:after:bottom-0 data-[state=active]:after:h-[3px] data-[state=active]:after:bg-ink data-[state=inactive]:text-ink2"
          >
            {name}
          </Tabs.Trigger>
        ))}
      </Tabs.List>
      <span className="lab">{note}</span>
    </Tabs.Root>
  );
}
