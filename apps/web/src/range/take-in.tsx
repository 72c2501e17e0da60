'use client';

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../api/client';
import { errorText } from '../api/api-error';
import { Fault } from '../look/notice';
import { StatusMark } from '../look/status-mark';
import { Working } from '../look/working';
import { DifferenceView } from './difference-view';
import { FileChoice } from '../look/file-choice';
import { reportText, TroubleTable } from './import-report';
import { base64Of, type FileFormat, formatNames, formatOf } from './read-file';
import { deskKey, type RevisionHead } from './use-revision';

interface ChosenFile {
  readonly name: string;
  readonly format: FileFormat;
  readonly contentBase64: string;
}

const wrongKind = (name: string): string =>
  `“${name}” is none of the files that are read. Allowed are ${formatNames.map((one) => `.${one}`).join(', ')}.`;

const chosenFile = async (file: File): Promise<ChosenFile> => {
  const format = formatOf(file);
  if (format === undefined) throw new Error(wrongKind(file.name));
  return { name: file.name, format, contentBase64: await base64Of(file) };
};

/** Reads a file over the draft: first what it would do, then, when somebody says so, it is done. */
export function TakeIn({ revision }: { readonly revision: RevisionHead }) {
  const { id: draftId, version } = revision;
  const queries = useQueryClient();
  const [file, setFile] = useState<ChosenFile>();
  const ask = async ({ name: _, ...given }: ChosenFile, apply: boolean) =>
    api.catalogue.importFile.mutate({ draftId, version, ...given, apply });
  const look = useMutation({
    mutationFn: async (given: File) => {
      const chosen = await chosenFile(given);
      setFile(chosen);
      return ask(chosen, false);
    },
  });
  const apply = useMutation({
    mutationFn: (chosen: ChosenFile) => ask(chosen, true),
    onSuccess: () => queries.invalidateQueries({ queryKey: [deskKey] }),
  });
  const begin = (given: File): void => {
    setFile(undefined);
    apply.reset();
    look.mutate(given);
  };
  const isBusy = look.isPending || apply.isPending;
  const { data } = look;
  const isDone = apply.data?.applied === true;
  const fault = look.error ?? apply.error;
  return (
    <section className="sec">
      <h2 className="mb-1">Take a file in</h2>
      <p className="say-sm mb-2 max-w-[76ch]">
        What it says of an item is put over what the draft says; columns that it does not have, and items that
        it does not name, stay as they are. It is looked at first, and changes nothing until you say so.
      </p>
      <FileChoice what="a CSV, XLSX or JSON file" accept=".csv,.xlsx,.json" isBusy={isBusy} onFile={begin} />
      <div className="mt-3 grid grid-cols-1 gap-4">
        {look.isPending && <Working text="Reading the file." />}
        {fault !== null && <Fault text={errorText(fault)} />}
        {data !== undefined && file !== undefined && data.report.troubles.length > 0 && (
          <TroubleTable report={data.report} file={file.name} />
        )}
        {data?.difference != null && file !== undefined && (
          <>
            <p role="status" className="flex flex-wrap items-center gap-3">
              <span>
                <StatusMark status="met" label="readable" /> <b className="font-semibold">{file.name}</b>:{' '}
                {reportText(data.report)}
              </span>
              {isDone ? (
                <b className="font-semibold">It is in the draft now.</b>
              ) : (
                data.report.added + data.report.changed > 0 && (
                  <button
                    type="button"
                    className="btn btn-ink"
                    disabled={isBusy}
                    onClick={() => apply.mutate(file)}
                  >
                    Put it into the draft
                  </button>
                )
              )}
            </p>
            {apply.isPending && <Working text="Writing the draft." />}
            <DifferenceView difference={data.difference} />
          </>
        )}
      </div>
    </section>
  );
}
