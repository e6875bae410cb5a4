/** Exit codes, as docs/command-line.md lists them; 130 is what shells give a program that Ctrl-C ended. */
export const exitCodes = { done: 0, refused: 1, usage: 2, broken: 3, cancelled: 130 } as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** Why a command stops, in a sentence for the person. */
export class CommandFailure extends Error {
  constructor(
    message: string,
    readonly exitCode: ExitCode = exitCodes.refused,
  ) {
    super(message);
    this.name = "CommandFailure";
  }
}

/** The command was not written as its help has it. */
export class WrongUsage extends CommandFailure {
  constructor(message: string) {
    super(message, exitCodes.usage);
    this.name = "WrongUsage";
  }
}

/** The person broke the work off, as with Ctrl-C. */
export class Cancelled extends CommandFailure {
  constructor() {
    super("Cancelled; nothing was written.", exitCodes.cancelled);
    this.name = "Cancelled";
  }
}

/** Words that keep their capital inside a sentence. */
const properNames = /^(?:Excel|Bathsheet|OpenDocument)\b/;

/** What other parts say in two sentences (what is wrong, what helps) as the one that a command gives. */
export function inOneSentence(text: string): string {
  const [first = "", ...rest] = text.trim().split(/(?<=[\w)"”!?])\. (?=[A-Z])/);
  return [first, ...rest.map((one) => (properNames.test(one) ? one : one.charAt(0).toLowerCase() + one.slice(1)))].join(
    "; ",
  );
}
