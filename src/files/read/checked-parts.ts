import type { Unzipped } from "fflate";

import { FileRefused } from "../unpack.ts";

/** Signatures and places of the archive's own directory (PKWARE's APPNOTE, 4.3.12 and 4.3.16). */
const directoryEnd = 0x06054b50;
const directoryEntry = 0x02014b50;
const endLength = 22;
const entryLength = 46;

/** The remainders of the check sum that archives carry, by byte (APPNOTE, 4.4.7). */
const remainders = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1) remainder = remainder & 1 ? (remainder >>> 1) ^ 0xedb88320 : remainder >>> 1;
  return remainder;
});

function checkSum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = (sum >>> 8) ^ (remainders[(sum ^ byte) & 0xff] ?? 0);
  return (sum ^ 0xffffffff) >>> 0;
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

/** What the archive says of its parts: check sums by name. */
function checkSums(bytes: Uint8Array): ReadonlyMap<string, number> {
  const file = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const sums = new Map<string, number>();
  let at = directoryStart(file);
  while (at !== undefined && at + entryLength <= file.byteLength && file.getUint32(at, true) === directoryEntry) {
    const nameLength = file.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + entryLength, at + entryLength + nameLength));
    sums.set(name, file.getUint32(at + 16, true));
    at += entryLength + nameLength + file.getUint16(at + 30, true) + file.getUint16(at + 32, true);
  }
  return sums;
}

/**
 * Throws FileRefused where a part is not what was packed: unpacking alone does not notice a figure that was changed on
 * the way.
 */
export function requireAsPacked(file: Uint8Array, parts: Unzipped): void {
  for (const [name, sum] of checkSums(file)) {
    const part = parts[name];
    if (part !== undefined && checkSum(part) !== sum)
      throw new FileRefused(
        `A part of the file (${name}) is not what was packed into it, so the file was damaged on its way here. Copy or download it again.`,
      );
  }
}
