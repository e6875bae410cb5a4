import { number, result, type TourSheet } from "./tour-sheet.ts";

export const water: TourSheet = {
  id: "water",
  name: "Water",
  clock: "07:00",
  title: "07:00  Water",
  story:
    "The reverse osmosis tank holds only 100 gallons this morning. MV tests the hard city water that has to make up the rest.",
  tabColor: "#35698C",
  steps: [
    {
      caption: "How hard the city water is",
      story: "From the laboratory's calcium and magnesium. The two schemes draw their lines differently.",
      parts: [
        number("calcium", "Calcium", 90, "mg/L"),
        number("magnesium", "Magnesium", 24, "mg/L"),
        result("Total hardness", "=BATH.HARDNESS([calcium], [magnesium])", "mg/L as CaCO3", "0.0", "hardness"),
        result("In words, by the default scheme (USGS)", "=BATH.HARDNESSCLASS([hardness])", ""),
        result("In words, by the water-treatment trade (WQA)", '=BATH.HARDNESSCLASS([hardness], "WQA")', ""),
      ],
    },
    {
      caption: "How much alkali it takes",
      story: "MV titrates a sample of city water with dilute acid, to pH 4.5.",
      parts: [
        number("sample", "Sample", 100, "mL"),
        number("acid", "Strength of the acid", 0.02, "eq/L"),
        number("titrant", "Acid to pH 4.5", 24, "mL"),
        result(
          "Alkalinity of the city water",
          "=BATH.ALKALINITY([titrant], [acid], [sample])",
          "mg/L as CaCO3",
          "0.0",
          "alkalinity",
        ),
      ],
    },
    {
      caption: "What the alkalinity of yesterday's bath was made of",
      story:
        "Two end points on one sample tell hydroxide, carbonate and bicarbonate apart. Each shows as one cell of the spill.",
      parts: [
        number("p", "Alkalinity to pH 8.3 (P)", 286, "mg/L as CaCO3"),
        number("total", "Alkalinity to pH 4.5 (total)", 436, "mg/L as CaCO3"),
        result("Hydroxide", "=INDEX(BATH.ALKALINITYSPLIT([p], [total]), 1, 1)", "mg/L as CaCO3", "0"),
        result("Carbonate", "=INDEX(BATH.ALKALINITYSPLIT([p], [total]), 1, 2)", "mg/L as CaCO3", "0"),
        result("Bicarbonate", "=INDEX(BATH.ALKALINITYSPLIT([p], [total]), 1, 3)", "mg/L as CaCO3", "0"),
      ],
    },
    {
      caption: "The fill: two waters in one tank",
      story:
        "100 gallons from the reverse osmosis tank, the rest of T1 from the city. Hardness and alkalinity in mg/L as CaCO3.",
      parts: [
        {
          kind: "list",
          id: "waters",
          columns: [
            { id: "waterName", header: "Water", format: "@" },
            { id: "waterVolume", header: "US gal", format: "0.0" },
            { id: "waterHardness", header: "Hardness", format: "0" },
            { id: "waterAlkalinity", header: "Alkalinity", format: "0" },
          ],
          rows: [
            ["Reverse osmosis", 100, 7, 5],
            ["City", 21.2, 324, 240],
          ],
        },
        number("roHardness", "Hardness of reverse osmosis water", 7, "mg/L as CaCO3"),
        number("target", "Hardness that the shop would accept", 50, "mg/L as CaCO3"),
        result(
          "Hardness of the fill",
          "=BATH.BLEND([waterHardness], [waterVolume])",
          "mg/L as CaCO3",
          "0.0",
          "fillHardness",
        ),
        result(
          "Alkalinity of the fill",
          "=BATH.BLEND([waterAlkalinity], [waterVolume])",
          "mg/L as CaCO3",
          "0.0",
          "fillAlkalinity",
        ),
        result(
          "How much of the fill would have to be reverse osmosis water?",
          "=BATH.BLENDSHARE([hardness], [roHardness], [target])",
          "of the fill",
          "0.0%",
        ),
      ],
    },
    {
      caption: "The softener and the reverse osmosis unit",
      story:
        "How far the softener goes between two regenerations, and what the membrane leaves. Softening leaves the alkalinity as it was.",
      parts: [
        number("capacity", "What the softener takes up at its salt setting", 24000, "grain", { format: "#,##0" }),
        number("iron", "Iron in the city water", 0.3, "mg/L"),
        number("feed", "Dissolved solids of the city water", 405, "mg/L"),
        number("recovery", "Permeate per feed", 0.5, "", { format: "0%" }),
        number("rejection", "Held back by the membrane", 0.965, "", { format: "0.0%" }),
        result(
          "Water between two regenerations",
          "=BATH.SOFTENERLIFE([capacity], [hardness], [iron])",
          "US gal",
          "#,##0",
        ),
        result(
          "Dissolved solids of the permeate",
          "=INDEX(BATH.ROSPLIT([feed], [recovery], [rejection]), 1, 1)",
          "mg/L",
          "0.0",
        ),
        result(
          "Dissolved solids of the reject water",
          "=INDEX(BATH.ROSPLIT([feed], [recovery], [rejection]), 1, 2)",
          "mg/L",
          "0",
        ),
        result(
          "Feed for each gallon of permeate",
          "=INDEX(BATH.ROSPLIT([feed], [recovery], [rejection]), 1, 3)",
          "gal per gal",
          "0.00",
        ),
      ],
    },
    {
      caption: "Scale in the rinse heater",
      story: "Above 0 the city water tends to leave scale on the heater. For supply and rinse water, never for a bath.",
      parts: [
        number("ph", "pH of the city water", 7.6, "pH", { format: "0.0" }),
        number("rinse", "Rinse heater", 120, "°F"),
        number("calciumHardness", "Hardness of the calcium alone", 225, "mg/L as CaCO3"),
        result(
          "Does the city water leave scale at that heat?",
          "=BATH.LSI([ph], [rinse], [calciumHardness], [alkalinity], [feed])",
          "index",
          "+0.00;-0.00;0.00",
        ),
      ],
    },
  ],
};
