'use client';

import { type DragEvent, type ReactNode, useId, useState } from 'react';

export interface FileChoiceProps {
  /** What may be dropped, in words. */
  readonly what: string;
  readonly accept: string;
  readonly isBusy: boolean;
  readonly onFile: (file: File) => void;
  /** What came of it, below. */
  readonly children?: ReactNode;
}

/** Takes a file, by choosing or dropping it. */
export function FileChoice({ what, accept, isBusy, onFile, children }: FileChoiceProps) {
  const id = useId();
  const [over, setOver] = useState(false);
  const take = (file: File | undefined): void => {
    if (file !== undefined && !isBusy) onFile(file);
  };
  return (
    <div
      className={`border border-dashed px-4 py-3 ${over ? 'border-given bg-given-t' : 'border-rule'}`}
      onDragOver={(event: DragEvent) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event: DragEvent) => {
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer.files[0]);
      }}
    >
      <p className="flex flex-wrap items-center gap-x-3 gap-y-1">
        <span className="text-ink2">Drop {what} here, or</span>
        <label
          htmlFor={id}
          className="btn focus-within:outline-2 focus-within:outline-offset-2 focus-within:outline-given"
        >
          choose a file
          <input
            id={id}
            type="file"
            accept={accept}
            disabled={isBusy}
            className="sr-only"
            onChange={({ target }) => {
              take(target.files?.[0]);
              target.value = '';
            }}
          />
        </label>
      </p>
      {children}
    </div>
  );
}
