import type { Item } from '@flangewise/model';
import { useQuery } from '@tanstack/react-query';
import { api } from '../api/client';
import { EngineClient } from './engine-client';

export interface Engine {
  readonly client: EngineClient;
  readonly items: readonly Item[];
  readonly currency: string | undefined;
  readonly priceListId: string | undefined;
}

/** One engine for all pages of this tab: it keeps its tables from system to system. */
export function useEngine() {
  return useQuery({
    queryKey: ['engine'],
    queryFn: async (): Promise<Engine> => {
      const { revision, items, prices, priceList } = await api.catalogue.get.query();
      return {
        client: new EngineClient({ revision, items, prices }),
        items,
        currency: priceList?.currency,
        priceListId: priceList?.id,
      };
    },
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: Number.POSITIVE_INFINITY,
    structuralSharing: false,
  });
}
