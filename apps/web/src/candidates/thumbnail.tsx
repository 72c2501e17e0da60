'use client';

import type { SystemInput } from '@flangewise/model';
import { drawingModelOf, sectionOf, thumbnailSvg } from '@flangewise/documents/drawings';
import { useMemo } from 'react';
import type { Engine } from '../engine/use-engine';
import { useCandidateView } from './use-candidate-view';

const box = { width: 52, height: 76 } as const;

export interface ThumbnailProps {
  readonly engine: Engine | undefined;
  readonly document: SystemInput;
}

/** The section of a candidate at the size of a stamp. */
export function Thumbnail({ engine, document }: ThumbnailProps) {
  const view = useCandidateView(engine, document);
  const svg = useMemo(() => {
    const section = view === undefined ? undefined : sectionOf(drawingModelOf(view.drawing), { set: 0 });
    return section === undefined ? '' : thumbnailSvg(section, box);
  }, [view]);
  return (
    <span aria-hidden="true" className="block h-[76px] w-[52px]" dangerouslySetInnerHTML={{ __html: svg }} />
  );
}
