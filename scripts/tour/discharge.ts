import { number, result, text, type TourSheet } from "./tour-sheet.ts";

const acids = ["citric", "sodium bisulfate", "hydrochloric", "sulfuric", "acetic"];

const stage = (row: number): ReturnType<typeof result> =>
  result(
    `=INDEX(BATH.ACIDSTAGES([acidByReading]), ${String(row)}, 2)`,
    `=INDEX(BATH.ACIDSTAGES([acidByReading]), ${String(row)}, 1)`,
    "lb",
    "0.000",
  );

export const discharge: TourSheet = {
  id: "discharge",
  name: "Discharge",
  clock: "17:40",
  title: "17:40  Discharge",
  story:
    "T1 has done its work. It is cooled and titrated before anything is added, and nothing leaves before the lab has found the metals in the water within the permit.",
  tabColor: "#8A6D2F",
  steps: [
    {
      caption: "Is it corrosive waste as it is?",
      story: "The spent bath, and half a pail of CN-1 that someone wants to throw away.",
      parts: [
        result("Spent bath, from Threshold and top-up", "=[topUp.later]", "pH", "0.00", "ph"),
        number("neat", "Neat CN-1", 12.9, "pH", { format: "0.00" }),
        result("Spent bath corrosive by its pH (D002)?", '=IF(BATH.CORROSIVE([ph]), "yes", "no")', ""),
        result("Undiluted CN-1 corrosive by its pH (D002)?", '=IF(BATH.CORROSIVE([neat]), "yes", "no")', ""),
      ],
    },
    {
      caption: "How much acid",
      story:
        "By what was titrated to the pH wanted, and by reading and total alkalinity. Where the two differ much, titrate again.",
      parts: [
        result("Bath to be neutralized, from Tank", "=[tank.volume]", "US gal", "0.00", "volume"),
        result("What makes CN-1 alkaline, from Charge", "=[charge.builder]", "", "General", "builder"),
        text("acid", "Acid", "citric", { choices: acids }),
        number("purity", "Acid in the product", 99.5, "% by weight", { format: "0.0" }),
        number("titrated", "Alkalinity titrated to pH 8.5", 362.3, "mg/L as CaCO3", { format: "0.0" }),
        number("target", "pH wanted", 8.5, "pH", { format: "0.0" }),
        number("temperature", "Bath now", 76, "°F"),
        number("total", "Alkalinity titrated to pH 4.5", 683.1, "mg/L as CaCO3", { format: "0.0" }),
        result(
          "Acid for the titrated alkalinity",
          "=BATH.ACIDFOR([volume], [titrated], [acid], [purity])",
          "lb; gal if liquid",
          "0.000",
        ),
        result(
          "Acid from the reading to the pH wanted",
          "=BATH.ACIDTO([volume], [ph], [target], [acid], [builder], [temperature], [total])",
          "lb; gal if liquid",
          "0.000",
          "acidByReading",
        ),
      ],
    },
    {
      caption: "In stages",
      story: "The plan is never poured at once: mix and read after each.",
      parts: [stage(1), stage(2), stage(3)],
    },
    {
      caption: "Against the shop's own limits",
      story: "Within limits is not permission to release.",
      parts: [
        number("low", "Lowest pH in the permit", 6, "pH", { format: "0.0", note: "invented permit QH-IU-017" }),
        number("high", "Highest pH in the permit", 10, "pH", { format: "0.0" }),
        number("after", "Neutralized, mixed, aerated", 8.4, "pH", { format: "0.0" }),
        number("afterAt", "Its temperature", 76, "°F"),
        result("Where does the pH lie?", "=BATH.DISCHARGECHECK([after], [low], [high], [afterAt])", ""),
      ],
    },
  ],
};
