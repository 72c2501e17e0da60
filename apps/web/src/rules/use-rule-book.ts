import type { RulePage } from '@flangewise/model';
import { useQuery } from '@tanstack/react-query';

export interface RuleBook {
  /** State of the rules, as offers carry it. */
  readonly revision: string;
  readonly pages: readonly RulePage[];
}

const workOut = (signal: AbortSignal): Promise<RuleBook> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./rules.worker.ts', import.meta.url), { type: 'module' });
    const end = (): void => worker.terminate();
    worker.addEventListener('message', ({ data }: MessageEvent<RuleBook>) => {
      resolve(data);
      end();
    });
    worker.addEventListener('error', ({ message }) => {
      reject(new Error(`The rules could not be read: ${message}`));
      end();
    });
    signal.addEventListener('abort', end);
  });

/** The rules in force, each with its page; worked out once a visit. */
export const useRuleBook = () =>
  useQuery({
    queryKey: ['rule book'],
    queryFn: ({ signal }) => workOut(signal),
    staleTime: Number.POSITIVE_INFINITY,
    structuralSharing: false,
    retry: false,
  });
