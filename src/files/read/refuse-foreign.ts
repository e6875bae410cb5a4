import { FileRefused } from "../unpack.ts";
import type { PackageParts } from "./package-parts.ts";

/** The container of old Office files and of files with a password (Microsoft, MS-CFB 2.2). */
const oldContainer = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const zip = [0x50, 0x4b];

function startsWith(file: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, index) => file[index] === byte);
}

/** Whether the container's directory, which names its streams in two bytes a letter, names this one. */
function namesStream(file: Uint8Array, name: string): boolean {
  const wanted = Array.from(name, (letter) => [letter.charCodeAt(0), 0]).flat();
  const [first] = wanted;
  if (first === undefined) return false;
  for (let at = file.indexOf(first); at >= 0; at = file.indexOf(first, at + 1))
    if (wanted.every((byte, index) => file[at + index] === byte)) return true;
  return false;
}

/** Throws FileRefused for bytes that are no packed workbook, with what they are and what can be done. */
export function refuseWhatIsNotPacked(file: Uint8Array): void {
  if (file.length === 0) throw new FileRefused("The file is empty. Copy or download it again from where it came from.");
  if (startsWith(file, oldContainer)) {
    throw new FileRefused(
      namesStream(file, "EncryptedPackage")
        ? "The workbook is locked with a password, without which it cannot be read. Open it in Excel, take the password off (File, Info, Protect Workbook), and save it."
        : "This is a file of the old Excel format (.xls), whatever its name says. Open it in Excel and save it as an Excel workbook (.xlsx).",
    );
  }
  if (!startsWith(file, zip))
    throw new FileRefused(
      "This is no Excel workbook (.xlsx), whatever its name says. Open it in the program that made it and save it from there as .xlsx.",
    );
}

/** Throws FileRefused for a packed file that is another thing than a workbook that can be opened here. */
export function refuseOtherPackages(parts: PackageParts): void {
  const types = parts.has("[Content_Types].xml") ? parts.text("[Content_Types].xml") : "";
  if (parts.names().some((name) => name.endsWith("vbaproject.bin")) || /macroEnabled/i.test(types))
    throw new FileRefused(
      "The workbook holds macros, which are neither run nor kept here. Open it in Excel and save a copy as an Excel workbook (.xlsx), without macros.",
    );
  if (parts.has("xl/workbook.bin"))
    throw new FileRefused(
      "The workbook is in Excel's binary format (.xlsb). Open it in Excel and save it as an Excel workbook (.xlsx).",
    );
  if (parts.has("mimetype") || parts.has("content.xml"))
    throw new FileRefused(
      "This is an OpenDocument file. Open it in the program that made it and save it as an Excel workbook (.xlsx).",
    );
  if (types === "")
    throw new FileRefused(
      "This is a packed file, but no Excel workbook. If a workbook lies within it, unpack it first and open that.",
    );
}
