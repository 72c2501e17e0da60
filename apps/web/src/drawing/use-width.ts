import { type RefObject, useEffect, useRef, useState } from 'react';

/** Width of an element in full pixels, as it changes; 0 before it is known. */
export function useWidth<E extends HTMLElement>(): readonly [RefObject<E | null>, number] {
  const element = useRef<E>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const observed = element.current;
    if (observed === null) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setWidth(Math.floor(entry.contentRect.width));
    });
    observer.observe(observed);
    return () => observer.disconnect();
  }, []);
  return [element, width];
}
