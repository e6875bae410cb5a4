import { number, result, text, type TourSheet } from "./tour-sheet.ts";

export const charge: TourSheet = {
  id: "charge",
  name: "Charge",
  clock: "07:20",
  title: "07:20  Charge",
  story: "The water stands cold in T1. KT works out how much of concentrate CN-1 goes in, before a pail is opened.",
  tabColor: "#3C7A6B",
  steps: [
    {
      caption: "The dose by the label",
      story: "The label of CN-1 asks for 1+28 in water of up to 40 mg/L hardness.",
      parts: [
        result("Bath volume, from Tank", "=[tank.volume]", "US gal", "0.00", "volume"),
        text("rate", "Strength on the label", "1+28", { note: "also 1 in 29, 3.45%, 4.4 fl oz/gal" }),
        result("Concentrate for the finished bath", "=BATH.DOSE([volume], [rate])", "US gal", "0.000", "dose"),
        result("The same in fluid ounces", '=BATH.UNITCONVERT([dose], "US gal", "fl oz")', "fl oz", "0.0"),
        result("Bath volume in liters, from Tank", "=[tank.liters]", "L", "0.0", "liters"),
        result("Concentrate by a metric shop's sheet", '=BATH.DOSE([liters], [rate], , "metric")', "L", "0.00"),
      ],
    },
    {
      caption: "What the water takes, by calculation",
      story: "Hardness above the label's and the bicarbonate of the city water use up concentrate before it can clean.",
      parts: [
        result("Hardness of the fill, from Water", "=[water.fillHardness]", "mg/L as CaCO3", "0.0", "hardness"),
        result("Alkalinity of the fill, from Water", "=[water.fillAlkalinity]", "mg/L as CaCO3", "0.0", "alkalinity"),
        number("labelHardness", "Hardness that the label allows for", 40, "mg/L as CaCO3", {
          note: "50 or less goes into a formula with its unit: it could be grains",
        }),
        number("capacity", "Hardness that 1 mL of CN-1 can tie up", 2.4, "mg CaCO3 per mL", { format: "0.0" }),
        number("strength", "Alkali in CN-1", 0.254, "eq/L", { format: "0.000" }),
        result(
          "Extra concentrate for hardness",
          '=BATH.HARDNESSDOSE([volume], [hardness], [capacity], [labelHardness]&" mg/L")',
          "US gal",
          "0.000",
          "forHardness",
        ),
        result(
          "Extra concentrate for bicarbonate",
          "=BATH.ALKALINITYDOSE([volume], [alkalinity], [strength])",
          "US gal",
          "0.000",
          "forAlkalinity",
        ),
        result("Dose with both extras", "=[dose]+[forHardness]+[forAlkalinity]", "US gal", "0.000"),
      ],
    },
    {
      caption: "What the water takes, by a jar test",
      story:
        "Jars of one size with the same soot: the smallest dose that cleans in this water and in reverse osmosis water. The shop goes by this.",
      parts: [
        number("jarHere", "Smallest dose that passes in the fill", 14, "mL"),
        number("jarReference", "The same in reverse osmosis water", 12, "mL"),
        result(
          "Concentrate for the bath, all of it",
          "=BATH.JARDOSE([volume], [jarHere], [jarReference], [rate])",
          "US gal",
          "0.000",
          "openingDose",
        ),
        result(
          "What strength is that? 1 part and so many",
          '=BATH.STRENGTHOF([openingDose], [volume], "parts")',
          "parts of water",
          "0.0",
        ),
        result(
          "The same in fluid ounces per gallon of bath",
          '=BATH.STRENGTHOF([openingDose], [volume], "fl oz/gal")',
          "fl oz/gal",
          "0.00",
        ),
      ],
    },
    {
      caption: "What if it were another dose?",
      story:
        "The bath read 11.42 after the charge. The maker does not say what makes CN-1 alkaline, so the builder is unknown.",
      parts: [
        number("ph", "pH of the charged bath at 77 °F", 11.42, "pH", { format: "0.00" }),
        text("builder", "What makes CN-1 alkaline", "unknown", {
          choices: ["unknown", "hydroxide", "silicate", "carbonate", "phosphate"],
        }),
        number("otherDose", "Another dose", 4.2, "US gal", { format: "0.000" }),
        number("otherPh", "Another pH", 11.33, "pH", { format: "0.00" }),
        result("pH at the other dose", "=BATH.PHATDOSE([openingDose], [ph], [otherDose], [builder])", "pH", "0.00"),
        result("Dose for the other pH", "=BATH.DOSEATPH([openingDose], [ph], [otherPh], [builder])", "US gal", "0.000"),
      ],
    },
  ],
};
