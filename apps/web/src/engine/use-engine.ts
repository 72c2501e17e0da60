import type { Item, SystemInput } from '@flangewise/model';
import { useQuery } from '@tanstack/react-query';
import { api } from '../api/client';
import { EngineClient } from './engine-client';

export interface Engine {
  readonly client: EngineClient;
  readonly items: readonly Item[];
  readonly currency: string | undefined;
  readonly priceListId: string | undefined;
}

/**
 * The engine over the range, with the prices that the API prices such a system by: one for all pages of this tab, since it keeps
 * its tables from system to system.
 *
 * @param system undefined while it is not known; of a search its inquiry alone
 */
export function useEngine(system: Pick<SystemInput, 'inquiry' | 'offer'> | undefined) {
  const priceList = system?.offer?.priceList;
  const currency = system?.inquiry.commercial?.currency;
  return useQuery({
    queryKey: ['engine', priceList ?? '', currency ?? ''],
    enabled: system !== undefined,
    queryFn: async (): Promise<Engine> => {
      const { revision, items, prices, specialRates, ...range } = await api.catalogue.get.query({
        priceList,
        currency,
      });
      return {
        client: new EngineClient({ revision, items, prices, specialRates }),
        items,
        currency: range.priceList?.currency,
        priceListId: range.priceList?.id,
      };
    },
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: Number.POSITIVE_INFINITY,
    structuralSharing: false,
  });
}
