import { useCallback, useEffect, useState } from 'react';

const inAddress = (): string | undefined => {
  const id = decodeURIComponent(location.hash.slice(1));
  return id === '' ? undefined : id;
};

const write = (id: string | undefined): void =>
  history.replaceState(
    history.state,
    '',
    id === undefined ? location.pathname + location.search : `#${encodeURIComponent(id)}`,
  );

/** The item that is looked at; it stands in the address, so that it can be sent and comes back after a reload. */
export function useOpenItem() {
  const [open, setOpen] = useState<string>();
  useEffect(() => {
    const read = (): void => setOpen(inAddress());
    read();
    addEventListener('hashchange', read);
    return () => removeEventListener('hashchange', read);
  }, []);
  const show = useCallback((id: string | undefined): void => {
    write(id);
    setOpen(id);
  }, []);
  return [open, show] as const;
}
