'use client';

import type { InquiryInput } from '@flangewise/model';
import { useId, useState, type DragEvent } from 'react';
import { StatusMark } from '../look/status-mark';
import { readInquiryFile } from './import-file';

export interface ImportButtonProps {
  readonly onRead: (document: Partial<InquiryInput>) => void;
}

/** Takes an inquiry from a JSON file, by choosing or dropping it. */
export function ImportButton({ onRead }: ImportButtonProps) {
  const id = useId();
  const [trouble, setTrouble] = useState<string>();
  const [over, setOver] = useState(false);
  const read = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const outcome = await readInquiryFile(file);
    setTrouble(outcome.ok ? undefined : outcome.error);
    if (outcome.ok) onRead(outcome.value);
  };
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    void read(event.dataTransfer.files[0]);
  };
  return (
    <div
      className={`border border-dashed px-4 py-3 ${over ? 'border-given bg-given-t' : 'border-rule'}`}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <p className="flex flex-wrap items-center gap-x-3 gap-y-1">
        <span className="text-ink2">Drop an inquiry file (JSON) here, or</span>
        <label
          htmlFor={id}
          className="btn focus-within:outline-2 focus-within:outline-offset-2 focus-within:outline-given"
        >
          choose a file
          <input
            id={id}
            type="file"
            accept=".json,application/json"
            className="sr-only"
            onChange={(event) => {
              void read(event.target.files?.[0]);
              event.target.value = '';
            }}
          />
        </label>
      </p>
      <p role="alert" className="mt-2 empty:hidden">
        {trouble !== undefined && (
          <>
            <StatusMark status="not met" label="refused" /> {trouble}
          </>
        )}
      </p>
    </div>
  );
}
