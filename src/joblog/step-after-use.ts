/** What a bath needs that was changed out: neutralizing, results, release. */
import { rowFacts, rowsOfBath } from "./bath-facts.ts";
import type { Bath, Step } from "./step.ts";
import { releaseState } from "./words.ts";

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
  if (state === "released") return { kind: "closed", sentence: `${closed} Its release is on record.`, urgent: false };
  const stands = state === undefined ? "Its release is not on record yet." : `${state.charAt(0).toUpperCase()}${state.slice(1)}.`;
  const further = state === releaseState.over ? " Keep it: treat it again under Release, or have it hauled." : "";
  return { kind: "release", sentence: `${closed} ${stands}${further}`, urgent: false };
}
