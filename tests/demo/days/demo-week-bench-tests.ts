import type { LogRow } from "../../../src/joblog/model/definition.ts";
import { demoBath, moment } from "../demo-week-times.ts";

const pieces = [
  { surface: "painted or decorated", piece: "painted trim offcut", trial: "pass", left: "" },
  { surface: "smooth ceramic or glass", piece: "glazed ceramic tile", trial: "pass", left: "" },
  { surface: "metal", piece: "stainless ladle", trial: "pass", left: "" },
  { surface: "plastic", piece: "ABS toy part", trial: "partial", left: ": smear left" },
  { surface: "sealed wood", piece: "varnished oak offcut", trial: "fail", left: ": soot drags" },
] as const;

const common = { bath: demoBath, water: "RO", method: "dwell and wipe", dwell: 30, initials: "KT" } as const;

function testId(number: number): string {
  return `T${String(number).padStart(3, "0")}`;
}

/** Invented, as all of the demo week: Monday's trial at 1+36 failed on two surfaces, the repeat at 1+28 passed on all. */
export const demoBenchTests: readonly LogRow<"benchTests">[] = [
  ...pieces.map(({ surface, piece, trial, left }, index) => ({
    id: testId(index + 1),
    ...common,
    when: moment(0, "09:05"),
    strength: "1+36",
    surface,
    result: trial,
    note: piece + left,
  })),
  ...pieces.map(({ surface, piece }, index) => ({
    id: testId(pieces.length + index + 1),
    ...common,
    when: moment(0, "09:35"),
    strength: "1+28",
    surface,
    result: "pass",
    note: piece,
  })),
];
