import { number, result, type TourSheet } from "./tour-sheet.ts";

const described = "[composition], [warm]";

export const solutionChemistry: TourSheet = {
  id: "solution",
  name: "Solution chemistry",
  clock: "17:20",
  title: "17:20  Solution chemistry",
  story:
    "Why did the hard make-up water cloud the bath last week? A silicate cleaner of known recipe, worked out from its components.",
  tabColor: "#5C6F9E",
  steps: [
    {
      caption: "The recipe in hard water",
      story: "Mol per kg of water, closed to air. An invented recipe: an SDS gives ranges at best.",
      parts: [
        {
          kind: "list",
          id: "composition",
          columns: [
            { id: "component", header: "Component", format: "@" },
            { id: "amount", header: "mol/kg", format: "0.0000" },
          ],
          rows: [
            ["NaOH", 0.0045],
            ["Na2SiO3", 0.002],
            ["NaHCO3", 0.001],
            ["CaCl2", 0.0004],
            ["MgCl2", 0.0002],
          ],
        },
        number("cool", "Cooled sample", 77, "°F"),
        number("warm", "Tank", 131, "°F"),
        result("pH of the cooled sample", "=BATH.SOLUTIONPH([composition], [cool])", "pH", "0.00"),
        result("pH in the tank", "=BATH.SOLUTIONPH([composition], [warm])", "pH", "0.00"),
      ],
    },
    {
      caption: "Everything about it in the hot tank",
      story: "Seven lines from one formula. A saturation index above 0 says that scale or haze can form.",
      parts: [1, 2, 3, 4, 5, 6, 7].map((row) =>
        result(
          `=INDEX(BATH.SOLUTION(${described}), ${String(row)}, 1)`,
          `=INDEX(BATH.SOLUTION(${described}), ${String(row)}, 2)`,
          "",
          row === 2 ? "0.0000" : "0.00",
        ),
      ),
    },
  ],
};
