import { moment } from "../../tests/demo/demo-week-times.ts";
import { tourDay } from "./tour-day.ts";
import { number, result, text, type TourSheet } from "./tour-sheet.ts";

const at = (clock: string): number => moment(tourDay, clock);

export const thresholdAndTopUp: TourSheet = {
  id: "topUp",
  name: "Threshold and top-up",
  clock: "15:00",
  title: "15:00  Threshold and top-up",
  story: "Nine loads of heavy kitchen soot later. Is T1 due, how much goes in, and did it help?",
  tabColor: "#7B5EA7",
  steps: [
    {
      caption: "Where the line is",
      story:
        "The baseline is what the fresh bath read after every test surface came clean. Half a point less is common practice, no source.",
      parts: [
        result("Baseline of T1, from Charge", "=[charge.ph]", "pH", "0.00", "baseline"),
        number("drop", "Fall at which a top-up is due", 0.5, "pH", { format: "0.00" }),
        number("baselineAt", "Baseline read at", 77, "°F"),
        number("hotAt", "Tank", 131, "°F"),
        result("Top up at, on a cooled sample", "=BATH.TRIGGER([baseline], [drop])", "pH", "0.00", "trigger"),
        result(
          "Top up at, read in the hot tank",
          "=BATH.TRIGGER([baseline], [drop], [baselineAt], [hotAt])",
          "pH",
          "0.00",
        ),
      ],
    },
    {
      caption: "The card on the tank",
      story: "The same trigger for the temperatures that samples have.",
      parts: [
        {
          kind: "list",
          id: "card",
          columns: [{ id: "cardTemperatures", header: "Sample, °F", format: "General" }],
          rows: [[68], [77], [86], [95], [113], [122], [131]],
        },
        {
          kind: "grid",
          formula: "=BATH.TRIGGERCARD([baseline], [drop], [baselineAt], [cardTemperatures])",
          rows: [1, 7],
          columns: [
            { spilled: 1, header: "Sample, °F", format: "General" },
            { spilled: 2, header: "Top up at, pH", format: "0.00" },
          ],
        },
      ],
    },
    {
      caption: "How fast it falls",
      story: "Cooled samples since the baseline. Times are dates to Excel, so the trend is by the day.",
      parts: [
        {
          kind: "list",
          id: "readings",
          columns: [
            { id: "afterLoad", header: "Sample", format: "@" },
            { id: "times", header: "Read", format: "hh:mm" },
            { id: "readingPh", header: "pH at 77 °F", format: "0.00" },
          ],
          rows: [
            ["Before the first load", at("11:30"), 11.41],
            ["After load 2", at("12:10"), 11.33],
            ["After load 4", at("12:50"), 11.25],
            ["After load 6", at("13:35"), 11.13],
            ["After load 8", at("14:20"), 11.02],
          ],
        },
        result("Change of pH by the day", "=BATH.PHTREND([times], [readingPh])", "pH per day", "0.00", "trend"),
        result("Change of pH by the hour", "=[trend]/24", "pH per hour", "0.000"),
        result(
          "Time left after the last reading",
          "=BATH.TIMELEFT([times], [readingPh], [trigger])",
          "days",
          "0.000",
          "daysLeft",
        ),
        result("When T1 would reach the trigger", "=MAX([times])+[daysLeft]", "", "hh:mm"),
      ],
    },
    {
      caption: "Is it due?",
      story: "At 14:55 someone reads in the hot tank. KT cools a sample and reads again.",
      parts: [
        number("hotReading", "Read in the hot tank", 10.2, "pH", { format: "0.00" }),
        number("reading", "Read on the cooled sample", 10.83, "pH", { format: "0.00" }),
        result(
          "Verdict on the hot reading",
          "=BATH.VERDICT([hotReading], [baseline], [drop], [baselineAt], [hotAt])",
          "",
        ),
        result("Verdict on the cooled reading", "=BATH.VERDICT([reading], [baseline], [drop])", ""),
      ],
    },
    {
      caption: "Water first: what the level lost",
      story: "Steam takes water only; baskets take bath. What left as bath needs concentrate with its water.",
      parts: [
        result("Lost since morning, from Tank", "=[tank.levelLoss]", "US gal", "0.00", "levelLoss"),
        result("Bath volume, from Tank", "=[tank.volume]", "US gal", "0.00", "volume"),
        number("loads", "Loads", 9, "loads"),
        number("dragOut", "Carried out by one load", 0.18, "US gal", { format: "0.00" }),
        number("drained", "Drained with the skimmings", 0.3, "US gal", { format: "0.00" }),
        text("rate", "Strength of the bath", "1+24"),
        result(
          "Steam",
          "=INDEX(BATH.MAKEUP([levelLoss], [loads], [dragOut], [drained], [rate]), 1, 1)",
          "US gal",
          "0.00",
        ),
        result(
          "Left as bath",
          "=INDEX(BATH.MAKEUP([levelLoss], [loads], [dragOut], [drained], [rate]), 1, 2)",
          "US gal",
          "0.00",
        ),
        result(
          "Concentrate to go with the water",
          "=INDEX(BATH.MAKEUP([levelLoss], [loads], [dragOut], [drained], [rate]), 1, 3)",
          "US gal",
          "0.000",
        ),
        result(
          "Strength left, were only water put back",
          "=BATH.DRAGOUT([volume], [dragOut], [loads])",
          "of the start",
          "0.0%",
        ),
      ],
    },
    {
      caption: "How much to add",
      story: "A range, since the builder is unknown. Add the first addition, mix, read, and only then decide on more.",
      parts: [
        result("Opening dose, from Charge", "=[charge.openingDose]", "US gal", "0.000", "openingDose"),
        result("What makes CN-1 alkaline, from Charge", "=[charge.builder]", "", "General", "builder"),
        result("Alkalinity of the fill, from Water", "=[water.fillAlkalinity]", "mg/L as CaCO3", "0.0", "alkalinity"),
        result(
          "Best estimate",
          "=BATH.TOPUP([openingDose], [baseline], [reading], [builder], [baselineAt], [alkalinity])",
          "US gal",
          "0.00",
        ),
        result(
          "Low estimate",
          "=INDEX(BATH.TOPUPRANGE([openingDose], [baseline], [reading], [builder], [baselineAt], [alkalinity]), 1, 1)",
          "US gal",
          "0.00",
        ),
        result(
          "Best estimate again",
          "=INDEX(BATH.TOPUPRANGE([openingDose], [baseline], [reading], [builder], [baselineAt], [alkalinity]), 1, 2)",
          "US gal",
          "0.00",
        ),
        result(
          "High estimate",
          "=INDEX(BATH.TOPUPRANGE([openingDose], [baseline], [reading], [builder], [baselineAt], [alkalinity]), 1, 3)",
          "US gal",
          "0.00",
        ),
        result(
          "Add this much first",
          "=INDEX(BATH.TOPUPRANGE([openingDose], [baseline], [reading], [builder], [baselineAt], [alkalinity]), 1, 4)",
          "US gal",
          "0.00",
        ),
      ],
    },
    {
      caption: "A second opinion by titration",
      story: "The acid that a 25 mL sample takes, fresh this morning and now.",
      parts: [
        number("fresh", "Fresh bath took", 1.43, "mL", { format: "0.00" }),
        number("now", "Takes now", 0.58, "mL", { format: "0.00" }),
        number("blank", "The water alone takes", 0.02, "mL", { format: "0.00" }),
        result("Top-up by titration", "=BATH.TOPUPTITRATION([openingDose], [fresh], [now], [blank])", "US gal", "0.00"),
      ],
    },
    {
      caption: "What the additions did",
      story: "KT adds twice, ten minutes of mixing each, and reads cooled samples.",
      parts: [
        {
          kind: "list",
          id: "additions",
          columns: [
            { id: "addition", header: "Addition", format: "@" },
            { id: "added", header: "Added, US gal", format: "0.00" },
            { id: "befores", header: "pH before", format: "0.00" },
            { id: "afters", header: "pH after", format: "0.00" },
          ],
          rows: [
            ["First, at 15:15", 1.6, 10.83, 11.14],
            ["Second, at 15:35", 1.6, 11.14, 11.34],
          ],
        },
        result(
          "What to add after the first addition",
          "=BATH.NEXTADD(INDEX([added], 1), INDEX([befores], 1), INDEX([afters], 1), [baseline], [builder], [baselineAt], [alkalinity], 0.1, [openingDose])",
          "US gal",
          "0.00",
        ),
        result("Is T1 back after the first?", "=BATH.RECOVERED(INDEX([afters], 1), [baseline])", ""),
        result("Is T1 back after the second?", "=BATH.RECOVERED(INDEX([afters], 2), [baseline])", ""),
        result("Added in all", "=SUM([added])", "US gal", "0.00", "toppedUp"),
      ],
    },
    {
      caption: "Due again before the evening",
      story:
        "The next top-up by what the last two did. It comes to most of an opening dose, so KT changes the bath instead.",
      parts: [
        number("later", "Read at 17:00 on a cooled sample", 10.9, "pH", { format: "0.00" }),
        result(
          "Top-up by what the additions did",
          "=BATH.TOPUPLEARNED([baseline], [later], [added], [befores], [afters], [openingDose])",
          "US gal",
          "0.00",
        ),
      ],
    },
  ],
};
