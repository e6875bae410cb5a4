import type { ExitCode } from "./failure.ts";

/** Where a command reads and writes; a test hands in its own. */
export interface Surroundings {
  /** What was asked for; may go into a pipe. */
  readonly out: (text: string) => void;
  /** What is wrong or left out, a line each. */
  readonly say: (line: string) => void;
  /** How far a long work is; only a person at a terminal sees it. */
  readonly progress: (line: string) => void;
  readonly readFile: (path: string) => Promise<Uint8Array>;
  /** All files in and beneath a folder, in an order of their own. */
  readonly listFiles: (folder: string) => Promise<readonly string[]>;
  readonly isSameFile: (one: string, other: string) => boolean;
  /** Whole or not at all; a file that is there stays, unless it is to be replaced. */
  readonly writeFile: (path: string, content: Uint8Array, how: { readonly replace: boolean }) => Promise<void>;
  /**
   * A new folder, whole or not at all. One that is there is replaced where that is asked for and it holds nothing
   * but entries of the names in `ours`.
   */
  readonly writeFolder: (
    path: string,
    files: readonly PlacedFile[],
    how: { readonly replace: boolean; readonly ours: readonly string[] },
  ) => Promise<void>;
  /** A folder for other programs to read, as long as the work takes. */
  readonly temporaryFolder: (
    files: readonly PlacedFile[],
  ) => Promise<{ readonly folder: string; readonly remove: () => Promise<void> }>;
  /** The text of a query of the roll-up. */
  readonly queryText: (name: string) => Promise<string>;
  /** Throws CommandFailure where the person has cancelled; a command that asks is not broken off in between. */
  readonly requireGoingOn: () => Promise<void>;
}

/** A file by its path beneath a folder. */
export interface PlacedFile {
  readonly path: string;
  readonly content: Uint8Array;
}

export interface OptionHelp {
  readonly name: string;
  readonly short?: string;
  /** What stands after it, as the help calls it; absent for a switch. */
  readonly value?: string;
  readonly help: string;
}

export interface Given {
  readonly words: readonly string[];
  /** The text after an option, by its name. */
  readonly values: Readonly<Record<string, string | undefined>>;
  readonly switches: ReadonlySet<string>;
}

export interface Command {
  readonly name: string;
  /** What stands after the name, as `FORMULA [--json]`. */
  readonly usage: string;
  readonly summary: string;
  readonly options: readonly OptionHelp[];
  readonly examples: readonly string[];
  /** How many words it takes. */
  readonly words: { readonly least: number; readonly most: number };
  readonly run: (given: Given, around: Surroundings) => Promise<ExitCode>;
}
