export type Tone = "plain" | "good" | "watch" | "act";

/** One thing that the entry means, said while it is typed. */
export interface Finding {
  readonly tone: Tone;
  readonly text: string;
}
