import type { Unzipped } from "fflate";

import { FileRefused } from "../unpack.ts";
import { zipDirectory } from "../zip-directory.ts";

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

/**
 * Throws FileRefused where a part is not what was packed: unpacking alone does not notice a figure that was changed on
 * the way.
 */
export function requireAsPacked(file: Uint8Array, parts: Unzipped): void {
  for (const { name, checkSum: sum } of zipDirectory(file)) {
    const part = parts[name];
    if (part !== undefined && checkSum(part) !== sum)
      throw new FileRefused(
        `A part of the file (${name}) is not what was packed into it, so the file was damaged on its way here. Copy or download it again.`,
      );
  }
}
