const namespace = 'http://www.w3.org/2000/svg';
/** Room around the lettering of a callout that counts as the callout [px]. */
const room = 3;
/** Least size of a target [px]. */
const leastSize = 24;

/** Box around all lettering of a callout; undefined where it has none. */
const letteringOf = (callout: SVGGraphicsElement): DOMRect | undefined => {
  const boxes = [...callout.querySelectorAll<SVGGraphicsElement>('text, circle.bal')].map((one) =>
    one.getBBox(),
  );
  if (boxes.length === 0) return undefined;
  const left = Math.min(...boxes.map(({ x }) => x));
  const top = Math.min(...boxes.map(({ y }) => y));
  const right = Math.max(...boxes.map(({ x, width }) => x + width));
  const bottom = Math.max(...boxes.map(({ y, height }) => y + height));
  return new DOMRect(left, top, right - left, bottom - top);
};

/** Makes the whole label of each callout a target, not only the strokes of its letters. */
export function addHitAreas(holder: HTMLElement): void {
  for (const callout of holder.querySelectorAll<SVGGraphicsElement>('.call')) {
    const box = letteringOf(callout);
    if (box === undefined || callout.querySelector('.hit') !== null) continue;
    const width = Math.max(leastSize, box.width + 2 * room);
    const height = Math.max(leastSize, box.height + 2 * room);
    const area = document.createElementNS(namespace, 'rect');
    area.setAttribute('class', 'hit');
    area.setAttribute('x', String(box.x + box.width / 2 - width / 2));
    area.setAttribute('y', String(box.y + box.height / 2 - height / 2));
    area.setAttribute('width', String(width));
    area.setAttribute('height', String(height));
    callout.prepend(area);
  }
}
