const endSignature = 0x06054b50;
const entrySignature = 0x02014b50;
const endLength = 22;

/** 1 January 1980, the first day that the format knows; midnight. */
const firstDay = 0x0021;

/** Where the record that ends an archive starts; −1 where there is none. */
const endOffset = (view: DataView): number => {
  for (let at = view.byteLength - endLength; at >= 0; at -= 1)
    if (view.getUint32(at, true) === endSignature) return at;
  return -1;
};

/**
 * The same ZIP archive with every entry dated 1 January 1980, so that equal contents are equal bytes.
 *
 * @source PKWARE APPNOTE 6.3.10, 4.3.7 local header, 4.3.12 central directory, 4.3.16 end of central directory
 */
export const undatedZip = (archive: Uint8Array): Uint8Array => {
  const copy = archive.slice();
  const view = new DataView(copy.buffer, copy.byteOffset, copy.byteLength);
  const end = endOffset(view);
  if (end < 0) return copy;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count && view.getUint32(at, true) === entrySignature; i += 1) {
    const local = view.getUint32(at + 42, true);
    view.setUint32(at + 12, firstDay << 16, true);
    view.setUint32(local + 10, firstDay << 16, true);
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return copy;
};
