'use client';

import type { SlotPath } from '@flangewise/model';
import { drawingStyle, type Scene, sceneToSvg, type SvgOptions } from '@flangewise/documents/drawings';
import { type MouseEvent, type PointerEvent, useLayoutEffect, useMemo, useRef } from 'react';
import { addHitAreas } from './hit-areas';
import './section-drawing.css';

export interface SectionDrawingProps {
  readonly scene: Scene;
  /** Pixels; lettering is not smaller than 11 px at this size. */
  readonly width: number;
  readonly height: number;
  readonly callouts: NonNullable<SvgOptions['callouts']>;
  readonly numbers: ReadonlyMap<SlotPath, number>;
  readonly selected: SlotPath | undefined;
  readonly onSelect: (path: SlotPath) => void;
  readonly dimensions?: boolean;
  /** Tells several drawings of a page apart. */
  readonly idPrefix: string;
}

const slotOf = (target: EventTarget): string | undefined =>
  target instanceof Element
    ? (target.closest<HTMLElement | SVGElement>('[data-slot]')?.dataset['slot'] ?? undefined)
    : undefined;

/** Link of a slot, so that parts and callouts are reached by keyboard and can be opened by address. */
export const slotHref = (path: SlotPath): string => `#${path}`;

/** The section to scale; a part or its callout chooses the slot. */
export function SectionDrawing(props: SectionDrawingProps) {
  const { scene, width, height, callouts, numbers, selected, onSelect, dimensions = true, idPrefix } = props;
  const holder = useRef<HTMLDivElement>(null);
  const svg = useMemo(
    () =>
      sceneToSvg(scene, {
        width,
        height,
        callouts,
        dimensions,
        numbers,
        idPrefix,
        href: slotHref,
        ...(selected === undefined ? {} : { selected }),
      }),
    [scene, width, height, callouts, dimensions, numbers, idPrefix, selected],
  );
  useLayoutEffect(() => {
    if (holder.current !== null) addHitAreas(holder.current);
  }, [svg]);
  const choose = (event: MouseEvent): void => {
    if (event.metaKey || event.ctrlKey || event.button !== 0) return;
    const slot = slotOf(event.target);
    if (slot === undefined) return;
    event.preventDefault();
    onSelect(slot as SlotPath);
  };
  /** Part and callout of one slot light up together. */
  const point = (event: PointerEvent): void => {
    const slot = slotOf(event.target);
    for (const element of holder.current?.querySelectorAll<SVGElement>('[data-slot]') ?? [])
      element.classList.toggle('is-pointed', element.dataset['slot'] === slot);
  };
  return (
    <div
      ref={holder}
      className="section-drawing"
      onClick={choose}
      onPointerOver={point}
      onPointerLeave={point}
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}

/** Style sheet of all drawings of a page. */
export function DrawingStyle() {
  return <style>{drawingStyle}</style>;
}
