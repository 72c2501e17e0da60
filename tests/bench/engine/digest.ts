/** A short text that differs where lists of flags differ: how many are set, and a hash of where. */
export function digest(flags: readonly Uint8Array[]): string {
  let hash = 0x811c9dc5;
  let set = 0;
  for (const list of flags)
    for (const flag of list) {
      set += flag;
      hash = Math.imul(hash ^ flag ^ 0x5a, 0x01000193);
    }
  return `${String(set)}:${(hash >>> 0).toString(36)}`;
}
