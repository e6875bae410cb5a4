/** What the label's highest strength leaves room for; the label wins. */
import { labelCheck } from "../../joblog/model/words.ts";
import type { RowFacts } from "../bath-facts.ts";
import { figure } from "../wording/figures.ts";

/** The next step up in strength after a failed bench test: a fifth less water (common practice, no source). */
const step = 0.8;

/** What is left where a bath fails at the label's highest strength. */
export const insteadOfStronger =
  "Do not go stronger: check water, temperature and dwell, skim and filter, or clean such pieces by hand.";

/** A ratio and a share of one strength differ in the last digits. */
const rounding = 1.001;

/** Parts of water to one of concentrate, rounded to the weaker side. */
const partsOf = (share: number): string => `1+${figure(Math.ceil((1 / share - 1) * 10 - 1e-6) / 10, 1)}`;

/** The strength wanted, as a share of the bath. */
function wantedShare(facts: RowFacts<"baths">): number | undefined {
  const [base, held] = [facts.number("baseDose"), facts.number("workingVolume")];
  return base === undefined || held === undefined ? undefined : base / held;
}

/** Whether the strength wanted is the strongest that the label names, or more. */
export function isAtLabelHighest(facts: RowFacts<"baths">): boolean {
  const [share, highest] = [wantedShare(facts), facts.number("labelHighest")];
  return share !== undefined && highest !== undefined && share * rounding >= highest;
}

/** A step up from the strength wanted, never beyond the label's highest; blank where there is none. */
export function stepUpFrom(facts: RowFacts<"baths">): string {
  const [share, highest] = [wantedShare(facts), facts.number("labelHighest")];
  if (share === undefined || isAtLabelHighest(facts)) return "";
  const parts = step * (1 / share - 1);
  return highest !== undefined && 1 / (1 + parts) > highest ? partsOf(highest) : `1+${figure(parts, 1)}`;
}

/** "1+18 (5.26%)" */
export function labelHighestWords(facts: RowFacts<"baths">): string {
  const highest = facts.number("labelHighest");
  return highest === undefined ? "not in the log" : `${partsOf(highest)} (${figure(100 * highest, 2)}%)`;
}

/** Asked before a bath is booked stronger than its label allows. */
export function labelDoubts(facts: RowFacts<"baths">): readonly string[] {
  const highest = labelHighestWords(facts);
  switch (facts.text("labelCheck")) {
    case labelCheck.wanted:
      return [
        `${facts.text("strength") ?? "This"} is stronger than the label's highest, ${highest}. The label wins: is it meant all the same?`,
      ];
    case labelCheck.poured:
      return [`So much concentrate makes the bath stronger than the label's highest, ${highest}. Did it all go in?`];
    default:
      return [];
  }
}
