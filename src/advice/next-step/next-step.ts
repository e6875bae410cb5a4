/**
 * The next thing to do with a bath, in one sentence with figures. Reads only what the log's own
 * formulas give, so pane and sheet cannot differ; the pane waits with it until the sheet shows that.
 */
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { isCellError } from "../../joblog/model/log-snapshot.ts";
import { findRow, rowFacts } from "../bath-facts.ts";
import { overdueOf } from "./overdue.ts";
import type { Bath, NextStep, Step } from "./step.ts";
import { closedStep } from "./step-after-use.ts";
import { baselineStep, benchStep, chargeStep } from "./step-before-use.ts";
import { holdStep, readAgainStep, topUpStep } from "./step-in-use.ts";

function stepFor(bath: Bath): Step {
  switch (bath.facts.text("state")) {
    case "charge":
      return chargeStep(bath);
    case "bench test":
      return benchStep(bath);
    case "baseline":
      return baselineStep(bath);
    case "top up":
      return topUpStep(bath);
    case "re-read":
      return readAgainStep(bath);
    case "in use":
      return holdStep(bath);
    case "closed":
      return closedStep(bath);
    default:
      return {
        kind: "wait",
        sentence: "The log has not worked out the state of this bath.",
        reason: "Look at its row on the Baths sheet.",
        urgent: false,
      };
  }
}

/**
 * The next step of a bath. `now` is an Excel serial number. Throws a RangeError where the log has no
 * bath of that id.
 */
export function nextStep(log: LogSnapshot, bathId: string, system: UnitSystem, now: number): NextStep {
  const row = findRow(log, "baths", "bath", bathId);
  if (row === undefined) throw new RangeError(`The log has no bath "${bathId}".`);
  const bath: Bath = { id: bathId, facts: rowFacts(row), log, system };
  const faulty = Object.entries(row.cells).find(([, value]) => isCellError(value));
  const step = stepFor(bath);
  const overdue = overdueOf(bath, now).filter(({ text }) => text !== step.sentence);
  return {
    ...step,
    overdue:
      faulty === undefined
        ? overdue
        : [
            ...overdue,
            { text: `The Baths sheet shows ${String(faulty[1])} in this bath's row: point at the cell to see why.` },
          ],
  };
}
