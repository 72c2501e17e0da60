'use client';

import type { InquiryInput } from '@flangewise/model';
import { useState } from 'react';
import { FileChoice } from '../look/file-choice';
import { StatusMark } from '../look/status-mark';
import { readInquiryFile } from './import-file';

export interface ImportButtonProps {
  readonly onRead: (document: Partial<InquiryInput>) => void;
}

/** Takes an inquiry from a JSON file, by choosing or dropping it. */
export function ImportButton({ onRead }: ImportButtonProps) {
  const [trouble, setTrouble] = useState<string>();
  const read = async (file: File): Promise<void> => {
    const outcome = await readInquiryFile(file);
    setTrouble(outcome.ok ? undefined : outcome.error);
    if (outcome.ok) onRead(outcome.value);
  };
  return (
    <FileChoice
      what="an inquiry file (JSON)"
      accept=".json,application/json"
      isBusy={false}
      onFile={(file) => void read(file)}
    >
      <p role="alert" className="mt-2 empty:hidden">
        {trouble !== undefined && (
          <>
            <StatusMark status="not met" label="refused" /> {trouble}
          </>
        )}
      </p>
    </FileChoice>
  );
}
