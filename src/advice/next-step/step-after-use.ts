/** What a bath needs that was changed out: neutralizing, results, release. */
import { releaseState } from "../../joblog/model/words.ts";
import { rowFacts, rowsOfBath } from "../bath-facts.ts";
import type { Bath, Step } from "./step.ts";

/** What a person does about each state of a release. */
const toDo: Readonly<Record<string, string>> = {
  [releaseState.limits]:
    "Write the pH limits of your permit or code: under Release, or for every bath under More, Shop, Limits.",
  [releaseState.ph]: "Mix, cool a sample, and read its pH.",
  [releaseState.below]: "Correct it in small steps: mix and read after each.",
  [releaseState.above]: "Acid in stages: mix and read after each.",
  [releaseState.over]: "Keep it: treat it again under Release, or have it hauled.",
  [releaseState.results]: "Keep it until they are in.",
  [releaseState.entered]: "If the permit allows it, release it, and record when, where and how much.",
  [releaseState.incomplete]: "Complete them under Release.",
};

export function closedStep(bath: Bath): Step {
  const reason = bath.facts.text("closeReason");
  const closed = `This bath is closed${reason === undefined ? "" : `: ${reason}`}.`;
  const row = rowsOfBath(bath.log, "releases", bath.id).at(-1);
  if (row === undefined) {
    return {
      kind: "release",
      sentence: "Titrate the spent bath, neutralize it in stages, and keep it until limits and results are in.",
      reason: `${closed} The permit and local code say where it may go; this log does not.`,
      urgent: false,
    };
  }
  const state = rowFacts(row).text("state");
  if (state === undefined)
    return { kind: "release", sentence: "The release is not on record yet.", reason: closed, urgent: false };
  if (state === releaseState.released)
    return { kind: "closed", sentence: `${closed} Its release is on record.`, urgent: false };
  const next = toDo[state];
  return {
    kind: "release",
    sentence: `${state.charAt(0).toUpperCase()}${state.slice(1)}.${next === undefined ? "" : ` ${next}`}`,
    reason: closed,
    urgent: false,
  };
}
