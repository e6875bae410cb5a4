import { number, result, text, type TourSheet } from "./tour-sheet.ts";

export const unitsAndStrength: TourSheet = {
  id: "units",
  name: "Units and strength",
  clock: "06:30",
  title: "06:30  Units and strength",
  story:
    "The water report counts in grains, the new thermometer in Celsius, and three suppliers write the same strength in three ways.",
  tabColor: "#3E6B73",
  steps: [
    {
      caption: "Put figures into the units of the shop",
      story: "One function for every kind of unit. It refuses to turn a volume into a mass.",
      parts: [
        number("grains", "Hardness on the water report", 18.9, "gpg"),
        number("celsius", "Thermometer in the tank", 55, "°C"),
        text("from", "Unit of a new pail", "US gal"),
        text("to", "Unit on its label", "L", { note: "any unit of the same kind; the table below lists some" }),
        number("pail", "Contents of the pail", 5, "US gal"),
        result(
          "What is the hardness in the laboratory's unit?",
          '=BATH.UNITCONVERT([grains], "gpg", "mg/L CaCO3")',
          "mg/L as CaCO3",
          "0.0",
        ),
        result("What does the thermometer show in °F?", '=BATH.UNITCONVERT([celsius], "°C", "°F")', "°F", "0.0"),
        result(
          "How much is the pail in the label's unit?",
          "=BATH.UNITCONVERT([pail], [from], [to])",
          "as chosen above",
          "0.00",
        ),
      ],
    },
    {
      caption: "What a strength on a label means",
      story: "1+28 is 1 part and 28 parts of water; 1 in 28 is 1 part of 28 in all. The second is stronger.",
      parts: [
        text("plus", "Maker of CN-1 writes", "1+28"),
        text("in", "Second supplier writes", "1 in 28"),
        text("ounces", "Third supplier writes", "4.4 fl oz/gal", { note: "to the gallon of finished bath" }),
        result("Concentrate in the finished bath at 1+28", "=BATH.STRENGTH([plus])", "of the bath", "0.00%"),
        result("The same for the second", "=BATH.STRENGTH([in])", "of the bath", "0.00%"),
        result("The same for the third", "=BATH.STRENGTH([ounces])", "of the bath", "0.00%"),
      ],
    },
    {
      caption: "Which units it knows",
      story: "In Excel, BATH.UNITS fills the whole table from one cell. These are the rows of one kind.",
      parts: [
        text("kind", "Kind of unit", "hardness", { note: "a kind of fewer units leaves #REF! in the last rows" }),
        {
          kind: "grid",
          formula: "=BATH.UNITS([kind])",
          rows: [2, 6],
          columns: [
            { spilled: 1, header: "Symbol", format: "General" },
            { spilled: 5, header: "Factor to SI", format: "0.000000E+00" },
          ],
        },
      ],
    },
  ],
};
