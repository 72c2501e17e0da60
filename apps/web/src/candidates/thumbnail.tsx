'use client';

import type { SystemInput } from '@flangewise/model';
import { drawingModelOf, sectionOf, thumbnailSvg } from '@flangewise/documents/drawings';
import { useQuery } from '@tanstack/react-query';
import type { Engine } from '../engine/use-engine';

const box = { width: 56, height: 64 } as const;

/** The section of a candidate at the size of a stamp. */
export function Thumbnail({
  engine,
  id,
  document,
}: {
  readonly engine: Engine | undefined;
  readonly id: string;
  readonly document: SystemInput;
}) {
  const { data } = useQuery({
    queryKey: ['thumbnail', id],
    enabled: engine !== undefined,
    queryFn: async ({ signal }) => {
      const answer = await engine?.client.ask('view', { document }, signal);
      if (answer?.ok !== true) return '';
      const section = sectionOf(drawingModelOf(answer.value.drawing), { set: 0 });
      return section === undefined ? '' : thumbnailSvg(section, box);
    },
    staleTime: Number.POSITIVE_INFINITY,
  });
  return (
    <span aria-hidden="true" className="block h-16 w-14" dangerouslySetInnerHTML={{ __html: data ?? '' }} />
  );
}
