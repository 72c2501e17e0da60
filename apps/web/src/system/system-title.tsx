'use client';

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { errorText } from '../api/api-error';
import { api } from '../api/client';
import { marginText } from '../figures/margin';
import { dayText } from '../figures/moment';
import { priceText } from '../figures/price';
import { statusClass } from '../look/status-mark';
import { TitleBlock } from './title-block';
import type { OpenedSystem } from './use-system';
import type { Workbench } from './workbench';

/** What the block tells of. */
export type Titled = Pick<Workbench, 'document' | 'nameOf' | 'assessment' | 'commercial' | 'currency'>;

export interface SystemTitleProps {
  readonly bench: Titled;
  readonly system: OpenedSystem;
  readonly priceListId: string | undefined;
  readonly mayFreeze: boolean;
  /** Only what is saved can be frozen. */
  readonly saved: boolean;
}

const unpriced = 'priced in the offer';

/** Freezes the system as it is saved under the next number. */
function useFreeze(id: string | undefined) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: () => api.systems.freeze.mutate({ id: id ?? '' }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ['inquiry'] }),
  });
}

/** What is chosen, by vessel and closure of every set. */
const titleOf = ({ document, nameOf }: Titled): string => {
  const names = (document.sets ?? []).map(({ choices }) =>
    typeof choices.vessel === 'string' ? nameOf(choices.vessel) : 'no vessel yet',
  );
  return names.join(' and ');
};

const closureOf = ({ document, nameOf }: Titled): string => {
  const closure = document.sets?.[0]?.choices.closure;
  return typeof closure === 'string' ? nameOf(closure) : '';
};

/** The title block of the workspace. */
export function SystemTitle({ bench, system, priceListId, mayFreeze, saved }: SystemTitleProps) {
  const freezing = useFreeze(system.id);
  const { assessment, commercial, currency } = bench;
  const margin = assessment?.leastMargin;
  const last = freezing.data ?? system.revisions[0];
  const title = titleOf(bench);
  const longest = commercial?.chain[0]?.step;
  return (
    <TitleBlock
      name={system.name}
      title={title}
      note={closureOf(bench)}
      price={
        currency === undefined
          ? undefined
          : {
              list: `list ${priceListId ?? ''}`,
              text:
                commercial === undefined
                  ? 'open'
                  : commercial.listPrice === null
                    ? unpriced
                    : priceText(commercial.listPrice, currency),
            }
      }
      delivery={{
        text:
          commercial === undefined || commercial.weeks === 0 ? 'open' : `${String(commercial.weeks)} weeks`,
        longest: longest === undefined || longest === title ? '' : `longest: ${longest}`,
      }}
      margin={{
        text: margin == null ? 'open' : marginText(margin.value),
        title: margin?.title ?? 'nothing decided yet',
        className:
          assessment === undefined || assessment.status === 'met' ? '' : statusClass(assessment.status),
      }}
      revision={{
        text: last === undefined ? 'draft' : `${String(last.number)}`,
        note: freezing.isError
          ? errorText(freezing.error)
          : last === undefined
            ? 'not frozen yet'
            : `${last.author}, ${dayText(new Date(last.createdAt))}`,
        action: mayFreeze && (
          <button
            type="button"
            className="btn-link min-h-0! py-0! text-[12px]!"
            disabled={!saved || freezing.isPending}
            title="Keeps the system as it is now, under a number, for good"
            onClick={() => freezing.mutate()}
          >
            freeze
          </button>
        ),
      }}
    />
  );
}
