import { result, type TourSheet } from "./tour-sheet.ts";

export const whatIf: TourSheet = {
  id: "whatIf",
  name: "What-if",
  clock: "17:10",
  title: "17:10  What-if",
  story: "Two tables for the wall: what to measure out for each tank, and what a top-up of T1 comes to.",
  tabColor: "#8C7A3D",
  steps: [
    {
      caption: "Concentrate for each tank at each strength",
      story: "In Excel the function fills the whole table from one cell. Change a volume or a strength.",
      parts: [
        {
          kind: "list",
          id: "tanks",
          columns: [
            { id: "tankName", header: "Tank", format: "@" },
            { id: "volumes", header: "US gal", format: "0.0" },
          ],
          rows: [
            ["T1", 121.2],
            ["T2", 18.5],
            ["Test bucket", 4],
          ],
        },
        {
          kind: "list",
          id: "strengths",
          columns: [
            { id: "use", header: "For", format: "@" },
            { id: "rates", header: "Strength", format: "@" },
          ],
          rows: [
            ["Light smoke", "1+40"],
            ["Usual", "1+28"],
            ["Kitchen soot", "1+18"],
          ],
        },
        {
          kind: "grid",
          formula: "=BATH.DOSETABLE([volumes], [rates])",
          rows: [2, 4],
          columns: [
            { spilled: 1, format: "General" },
            { spilled: 2, format: "0.000" },
            { spilled: 3, format: "0.000" },
            { spilled: 4, format: "0.000" },
          ],
        },
      ],
    },
    {
      caption: "Top-up of T1 by reading",
      story:
        "Low, best and high estimate in US gallons, for cooled samples. Add a third of the opening dose at most, then read.",
      parts: [
        result("Opening dose, from Charge", "=[charge.openingDose]", "US gal", "0.000", "openingDose"),
        result("Baseline of T1, from Charge", "=[charge.ph]", "pH", "0.00", "baseline"),
        result("What makes CN-1 alkaline, from Charge", "=[charge.builder]", "", "General", "builder"),
        {
          kind: "list",
          id: "card",
          columns: [{ id: "readings", header: "Reading, pH", format: "General" }],
          rows: [[11.33], [11.1], [10.92], [10.7]],
        },
        {
          kind: "grid",
          formula: "=BATH.TOPUPTABLE([openingDose], [baseline], [readings], [builder])",
          rows: [1, 4],
          columns: [
            { spilled: 1, header: "Reading, pH", format: "General" },
            { spilled: 2, header: "Low", format: "0.00" },
            { spilled: 3, header: "Best", format: "0.00" },
            { spilled: 4, header: "High", format: "0.00" },
          ],
        },
      ],
    },
  ],
};
