import type { LogContent, LogRow } from "../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../demo/days/demo-week.ts";

/** Hours between two readings: a busy shop with one bath. */
const readingStep = 0.5 / 24;

function running(letter: string, index: number): string {
  return `${letter}${String(index + 1).padStart(4, "0")}`;
}

/** The demo's bath read and topped up until the log holds as many rows; every row of it is invented. */
export function largeLog(readingCount: number, additionCount: number): LogContent {
  const { rows } = firstTwoDays;
  const [bath] = rows.baths ?? [];
  const first = rows.readings?.[0]?.when;
  if (bath?.bath === undefined || typeof first !== "number")
    throw new RangeError("The demo holds no bath that was read.");
  const days = (readingCount * readingStep) / additionCount;
  const readings = (index: number): LogRow<"readings"> => ({
    id: running("R", index),
    bath: bath.bath,
    when: first + 2 + index * readingStep,
    purpose: "check",
    ph: 11.4 - (index % 30) / 50,
    temperature: 77,
    meter: "M-1",
  });
  const additions = (index: number): LogRow<"additions"> => ({
    id: running("A", index),
    bath: bath.bath,
    when: first + 2.01 + index * days,
    kind: index % 3 === 0 ? "water" : "concentrate",
    purpose: index % 3 === 0 ? "make-up" : "top-up",
    amount: 1.2,
    account: "claims",
  });
  const filled = <Row>(
    known: readonly Row[] | undefined,
    count: number,
    row: (index: number) => Row,
  ): readonly Row[] => {
    const given = known ?? [];
    return [
      ...given,
      ...Array.from({ length: Math.max(0, count - given.length) }, (_, index) => row(given.length + index)),
    ];
  };
  return {
    fields: firstTwoDays.fields,
    rows: {
      ...rows,
      readings: filled(rows.readings, readingCount, readings),
      additions: filled(rows.additions, additionCount, additions),
    },
  };
}
