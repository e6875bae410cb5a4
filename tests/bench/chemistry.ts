import { evaluate } from "../../functions/evaluate.ts";
import { verdict } from "../../functions/threshold/verdict.ts";
import { topUpRange } from "../../functions/top-up/top-up-range.ts";
import type { BathQuestion } from "../../src/core/bath/model/bath-question.ts";
import { unknownBuilder } from "../../src/core/bath/model/builder.ts";
import { estimateReadingAt } from "../../src/core/bath/model/estimate-reading.ts";
import { estimateTopUp } from "../../src/core/bath/model/estimate-top-up.ts";
import { waterFromTests } from "../../src/core/bath/model/water.ts";
import type { Composition } from "../../src/core/chemistry/composition.ts";
import { composition } from "../../src/core/chemistry/composition.ts";
import { beginSweep, sweepPH } from "../../src/core/chemistry/equilibrium/sweep.ts";
import { phOf } from "../../src/core/chemistry/ph-of.ts";
import { equivalentsPerKilogram, kelvin, ph } from "../../src/core/units/quantity.ts";

/**
 * Figures depend on the machine, so each stands beside the time of the same number of exponentials, which is what a
 * solve is made of.
 */
const exponentialsTimed = 5_000_000;

function seconds(work: () => void): number {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
}

function secondsPerExponential(): number {
  let sum = 0;
  const elapsed = seconds(() => {
    for (let index = 0; index < exponentialsTimed; index += 1)
      sum += Math.exp(-index / exponentialsTimed + sum * 1e-12);
  });
  if (!Number.isFinite(sum)) throw new Error("The exponentials came to nothing");
  return elapsed / exponentialsTimed;
}

interface Figure {
  readonly what: string;
  readonly times: number;
  readonly goal: string;
  readonly run: (index: number) => void;
}

const at45 = kelvin(318.15);
const silicateBath = composition({ sodium: 0.0195, silicate: 0.0044, carbonate: 0.0028 });
const hardWithEdta = composition({
  sodium: 0.05,
  calcium: 0.00205,
  magnesium: 0.00103,
  chloride: 0.00116,
  sulfate: 0.001,
  carbonate: 0.00436,
  phosphate: 0.008,
  edta: 0.002,
});
const water = waterFromTests({ alkalinity: equivalentsPerKilogram(0.002) });

const bathAt = (baseline: number): BathQuestion => ({
  baseline: ph(baseline),
  temperature: at45,
  builder: unknownBuilder,
  water,
});

/** Each solve of a sweep has a little more acid than the one before, over a hundred steps. */
function swept(base: Composition): (index: number) => void {
  const sweep = beginSweep(base, at45, "none");
  const steps = Array.from({ length: 100 }, (_, step) => ({ ...base, chloride: base.chloride + step * 5e-5 }));
  return (index) => {
    sweepPH(sweep, steps[index % steps.length] ?? base);
  };
}

function verdictCell(
  baseline: (index: number) => number,
  temperature: (index: number) => number,
  alkalinity: number | null = 100,
): (index: number) => void {
  return (index) => {
    const at = Math.abs(index);
    evaluate(verdict, [10 + (at % 150) / 100, baseline(at), 0.5, 77, temperature(at), "unknown", alkalinity, "US"]);
  };
}

const figures: readonly Figure[] = [
  { what: "silicate bath, in a sweep", times: 200_000, goal: "200,000 /s", run: swept(silicateBath) },
  { what: "silicate bath, cold", times: 100_000, goal: "", run: () => phOf(silicateBath, at45) },
  { what: "hard water with EDTA, in a sweep", times: 50_000, goal: "30,000 /s", run: swept(hardWithEdta) },
  { what: "hard water with EDTA, cold", times: 20_000, goal: "", run: () => phOf(hardWithEdta, at45) },
  {
    what: "hard water with EDTA and solids, cold",
    times: 10_000,
    goal: "",
    run: () => phOf(hardWithEdta, at45, "calcite and brucite"),
  },
  {
    what: "top-up range, builder unknown, every bath new",
    times: 2_000,
    goal: "",
    run: (index) => estimateTopUp(bathAt(11.3 + index * 1e-6), ph(10.8 + index * 1e-6)),
  },
  {
    what: "top-up range, builder unknown, one bath",
    times: 2_000,
    goal: "",
    run: (index) => estimateTopUp(bathAt(11.3), ph(10.5 + index * 1e-4)),
  },
  {
    what: "trigger as read, builder unknown, every bath new",
    times: 10_000,
    goal: "10,000 /s",
    run: (index) => estimateReadingAt(bathAt(11.2 + index * 1e-6), ph(10.7 + index * 1e-6), kelvin(308 + (index % 17))),
  },
  {
    what: "trigger as read, builder unknown, a log's baths",
    times: 10_000,
    goal: "10,000 /s",
    run: (index) =>
      estimateReadingAt(bathAt(11 + (index % 5) / 10), ph(10.5 + (index % 5) / 10), kelvin(308 + (index % 17))),
  },
];

/** A column of verdicts as the log fills it: some baths, readings in hundredths, temperatures in tenths. */
const verdicts: readonly Figure[] = [
  {
    what: "VERDICT cell, ten baths of a log",
    times: 10_000,
    goal: "10,000 /s",
    run: verdictCell(
      (index) => 11 + (index % 10) / 20,
      (index) => 95 + (index % 400) / 10,
    ),
  },
  {
    what: "VERDICT cell, one bath, every temperature new",
    times: 10_000,
    goal: "10,000 /s",
    run: verdictCell(
      () => 11.3,
      (index) => 95 + index * 1e-3,
    ),
  },
  {
    what: "VERDICT cell, one bath of untested water, every temperature new",
    times: 10_000,
    goal: "10,000 /s",
    run: verdictCell(
      () => 11.3,
      (index) => 95 + index * 1e-3,
      null,
    ),
  },
  {
    what: "VERDICT cell, every bath and temperature new",
    times: 10_000,
    goal: "",
    run: verdictCell(
      (index) => 11.3 + index * 1e-6,
      (index) => 95 + index * 1e-3,
    ),
  },
  {
    what: "TOPUPRANGE cell, builder unknown, one bath",
    times: 2_000,
    goal: "",
    run: (index) =>
      evaluate(topUpRange, [
        4.178,
        11.42,
        10.5 + Math.abs(index) * 1e-4,
        "unknown",
        77,
        100,
        null,
        null,
        null,
        null,
        "US",
      ]),
  },
];

const warmUp = 0.1;

/** Prints how many solves and verdicts of a kind are done in a second. */
export function benchChemistry(): void {
  const exponential = secondsPerExponential();
  console.log(`one exponential: ${(exponential * 1e9).toFixed(1)} ns`);
  for (const { what, times, goal, run } of [...figures, ...verdicts]) {
    for (let index = 0; index < times * warmUp; index += 1) run(-1 - index);
    const each =
      seconds(() => {
        for (let index = 0; index < times; index += 1) run(index);
      }) / times;
    const rate = Math.round(1 / each).toLocaleString("en-US");
    console.log(
      `${what}: ${rate} /s, ${(each / exponential).toFixed(0)} exponentials each${goal === "" ? "" : ` (goal ${goal})`}`,
    );
  }
}
