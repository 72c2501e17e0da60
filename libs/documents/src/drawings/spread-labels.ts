interface Block {
  readonly sum: number;
  readonly count: number;
}

const mean = ({ sum, count }: Block): number => sum / count;

/**
 * Heights as near as possible to the wanted ones (least squares), in the same order, at least `pitch` apart and
 * inside the span; closer where the span is too short. Pool-adjacent-violators on the heights less i · pitch.
 */
export const spreadLabels = (
  wanted: readonly number[],
  pitch: number,
  [low, high]: readonly [number, number],
): number[] => {
  const step = Math.min(pitch, (high - low) / Math.max(1, wanted.length - 1));
  const blocks: Block[] = [];
  wanted.forEach((y, i) => {
    let block: Block = { sum: y - i * step, count: 1 };
    for (let last = blocks.at(-1); last !== undefined && mean(last) > mean(block); last = blocks.at(-1)) {
      blocks.pop();
      block = { sum: last.sum + block.sum, count: last.count + block.count };
    }
    blocks.push(block);
  });
  const most = high - (wanted.length - 1) * step;
  return blocks
    .flatMap((block) => Array.from({ length: block.count }, () => Math.min(most, Math.max(low, mean(block)))))
    .map((y, i) => y + i * step);
};
