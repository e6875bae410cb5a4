import { type Unzipped, unzipSync } from "fflate";

/** A file that is none of ours to open, in a sentence for the person. */
export class FileRefused extends Error {
  constructor(message: string) {
    super(message);
    this.name = "FileRefused";
  }
}

const mebibyte = 1 << 20;

/**
 * A log of 1,000 readings unpacks to some 20 MiB; a packed bomb to thousands. Sizes are taken from the
 * archive's own directory before anything is unpacked, and no part unpacks to more than it says there.
 */
const unpackLimits = {
  packed: 64 * mebibyte,
  unpacked: 512 * mebibyte,
  part: 256 * mebibyte,
  parts: 4000,
  ratio: 1000,
} as const;

/** The parts of a packed workbook. Throws FileRefused where it is no archive or beyond the limits. */
export function unpack(file: Uint8Array): Unzipped {
  if (file.length > unpackLimits.packed)
    throw new FileRefused("The workbook is too large to be copied here (over 64 MB).");
  let parts = 0;
  let unpacked = 0;
  const tooMuch = new FileRefused("The workbook unpacks to far more than a workbook holds, so it was not opened.");
  try {
    return unzipSync(file, {
      filter: ({ size, originalSize }) => {
        parts += 1;
        unpacked += originalSize;
        const isBomb = originalSize > mebibyte && originalSize > size * unpackLimits.ratio;
        if (
          isBomb ||
          originalSize > unpackLimits.part ||
          unpacked > unpackLimits.unpacked ||
          parts > unpackLimits.parts
        )
          throw tooMuch;
        return true;
      },
    });
  } catch (error) {
    if (error === tooMuch) throw tooMuch;
    throw new FileRefused("The workbook could not be read as an .xlsx file.");
  }
}
