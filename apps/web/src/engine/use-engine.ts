import type { InquiryInput, Item } from '@flangewise/model';
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
 * The engine over the range, with prices in the currency that an inquiry asks for: one for all pages of this tab, since it
 * keeps its tables from system to system.
 */
export function useEngine(inquiry: InquiryInput | undefined) {
  const currency = inquiry?.commercial?.currency;
  return useQuery({
    queryKey: ['engine', currency ?? ''],
    enabled: inquiry !== undefined,
    queryFn: async (): Promise<Engine> => {
      const { revision, items, prices, specialRates, priceList } = await api.catalogue.get.query({
        currency,
      });
      return {
        client: new EngineClient({ revision, items, prices, specialRates }),
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
