import { parseSlotPath, type SlotPath } from '@flangewise/model';
import { useCallback, useEffect, useState } from 'react';

const pathInAddress = (): SlotPath | undefined => {
  const path = decodeURIComponent(location.hash.slice(1));
  return parseSlotPath(path) === undefined ? undefined : (path as SlotPath);
};

/** The slot that is looked at; it stands in the address, so that it can be sent and comes back after a reload. */
export function useSelectedSlot() {
  const [selected, setSelected] = useState<SlotPath>();
  useEffect(() => {
    const read = (): void => setSelected(pathInAddress());
    read();
    addEventListener('hashchange', read);
    return () => removeEventListener('hashchange', read);
  }, []);
  const select = useCallback((path: SlotPath): void => {
    history.replaceState(history.state, '', `#${path}`);
    setSelected(path);
  }, []);
  return [selected, select] as const;
}
