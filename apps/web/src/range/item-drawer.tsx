'use client';

import { type Item, slots } from '@flangewise/model';
import type { ReactNode } from 'react';
import { exactPriceText } from '../figures/price';
import { Drawer } from '../look/drawer';
import { ItemView } from './item-view';
import type { ListPrices } from './list-prices';

export interface ItemDrawerProps {
  readonly item: Item;
  readonly lists: readonly ListPrices[];
  readonly onClose: () => void;
  readonly children?: ReactNode;
}

function Prices({ id, lists }: { readonly id: string; readonly lists: readonly ListPrices[] }) {
  return (
    <section className="sec mt-5">
      <h3 className="mb-1">List prices</h3>
      <dl>
        {lists.map((list) => {
          const price = list.of[id];
          return (
            <div key={list.id} className="row flex justify-between gap-4 py-1.5">
              <dt className="text-ink2">{list.id}</dt>
              <dd className="font-medium">
                {price === undefined ? 'not listed' : exactPriceText(price, list.currency)}
              </dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}

/** One item beside the table, with everything that the range says of it. */
export function ItemDrawer({ item, lists, onClose, children }: ItemDrawerProps) {
  return (
    <Drawer title={item.name} onClose={onClose}>
      <p className="mb-3 text-ink2">
        <b className="font-semibold text-ink">{item.id}</b> {slots[item.slot].title}, {item.life}
      </p>
      {children}
      <ItemView item={item} />
      {lists.length > 0 && <Prices id={item.id} lists={lists} />}
    </Drawer>
  );
}
