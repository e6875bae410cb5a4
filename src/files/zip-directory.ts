/** Signatures and lengths of the archive's own directory (PKWARE's APPNOTE, 4.3.7, 4.3.12 and 4.3.16). */
const directoryEnd = 0x06054b50;
const directoryEntry = 0x02014b50;
const endLength = 22;
const entryLength = 46;

/** What an archive's directory says of a part. */
export interface ZipEntry {
  readonly name: string;
  readonly checkSum: number;
  /** 0 is stored, 8 deflated (APPNOTE, 4.4.5). */
  readonly method: number;
  readonly packed: number;
  readonly unpacked: number;
  /** Where the part's own header begins. */
  readonly at: number;
}

/** Where the directory begins; undefined for an archive whose directory is of the kind for huge files. */
function directoryStart(file: DataView): number | undefined {
  for (let at = file.byteLength - endLength; at >= 0; at -= 1) {
    if (file.getUint32(at, true) !== directoryEnd) continue;
    const start = file.getUint32(at + 16, true);
    return start === 0xffffffff ? undefined : start;
  }
  return undefined;
}

/** The entries of a packed file's directory, as far as it can be read. */
export function zipDirectory(bytes: Uint8Array): readonly ZipEntry[] {
  const file = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entries: ZipEntry[] = [];
  const decoder = new TextDecoder();
  let at = directoryStart(file);
  while (at !== undefined && at + entryLength <= file.byteLength && file.getUint32(at, true) === directoryEntry) {
    const nameLength = file.getUint16(at + 28, true);
    entries.push({
      name: decoder.decode(bytes.subarray(at + entryLength, at + entryLength + nameLength)),
      checkSum: file.getUint32(at + 16, true),
      method: file.getUint16(at + 10, true),
      packed: file.getUint32(at + 20, true),
      unpacked: file.getUint32(at + 24, true),
      at: file.getUint32(at + 42, true),
    });
    at += entryLength + nameLength + file.getUint16(at + 30, true) + file.getUint16(at + 32, true);
  }
  return entries;
}
