import { crc32, inflateRawSync } from "node:zlib";

import { zipDirectory, type ZipEntry } from "../../files/zip-directory.ts";
import { NotPlain } from "./not-plain.ts";

const mebibyte = 1 << 20;

/** Far more than a log has; what is beyond is left to the whole reader, which says what is wrong with it. */
const most = { packed: 64 * mebibyte, unpacked: 128 * mebibyte, parts: 1000 } as const;

/** Marks of packed files that are refused whatever they hold, by the whole reader. */
const foreign = /vbaproject\.bin$|^xl\/workbook\.bin$|^mimetype$|^content\.xml$|\[trash\]/i;

/** Length of a part's own header without its name and extra field (APPNOTE, 4.3.7). */
const headerLength = 30;

/** Parts of a packed file by name, unpacked when they are asked for. Throws NotPlain at whatever a log's file never has. */
export class ScannedParts {
  private readonly entries = new Map<string, ZipEntry>();
  private readonly file: DataView;
  private unpacked = 0;

  constructor(private readonly bytes: Uint8Array) {
    this.file = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const entries = zipDirectory(bytes);
    if (bytes.length > most.packed || entries.length === 0 || entries.length > most.parts)
      throw new NotPlain("the archive");
    for (const entry of entries) {
      const name = entry.name.toLowerCase();
      if (this.entries.has(name) || foreign.test(name)) throw new NotPlain(entry.name);
      this.entries.set(name, entry);
    }
  }

  names(): readonly string[] {
    return [...this.entries.keys()];
  }

  /** Undefined where there is none. */
  text(name: string): string | undefined {
    return this.checked(name)?.toString("utf8");
  }

  /** The bytes of a part, a character each: far quicker to make, and all of XML's own characters stand in it as they are. */
  bytesAsText(name: string): string | undefined {
    const text = this.checked(name)?.toString("latin1");
    const encoding = text === undefined ? undefined : /^[^>]*\bencoding=["']([^"']*)/.exec(text)?.[1];
    if (encoding !== undefined && encoding.toLowerCase() !== "utf-8") throw new NotPlain(name);
    return text;
  }

  private checked(name: string): Buffer | undefined {
    const entry = this.entries.get(name.toLowerCase());
    if (entry === undefined) return undefined;
    const content = this.contentOf(entry);
    // Sizes and sums of the directory are what the writer packed; anything else was damaged or made up.
    if (content.length !== entry.unpacked || crc32(content) !== entry.checkSum) throw new NotPlain(name);
    return Buffer.from(content.buffer, content.byteOffset, content.byteLength);
  }

  private contentOf({ name, at, packed, unpacked, method }: ZipEntry): Uint8Array {
    this.unpacked += unpacked;
    if (this.unpacked > most.unpacked || at + headerLength > this.file.byteLength) throw new NotPlain(name);
    const from = at + headerLength + this.file.getUint16(at + 26, true) + this.file.getUint16(at + 28, true);
    const stored = this.bytes.subarray(from, from + packed);
    if (method === 0) return stored;
    if (method !== 8) throw new NotPlain(name);
    try {
      // One piece, a little too long, so that none are put together.
      return inflateRawSync(stored, { maxOutputLength: Math.max(1, unpacked), chunkSize: unpacked + 1024 });
    } catch {
      throw new NotPlain(name);
    }
  }
}
