import { number, result, type TourSheet } from "./tour-sheet.ts";

export const tank: TourSheet = {
  id: "tank",
  name: "Tank",
  clock: "06:45",
  title: "06:45  Tank",
  story: "KT measures tank T1 with a steel rule: inside walls, and from the floor to the fill line.",
  tabColor: "#4F7F8B",
  steps: [
    {
      caption: "How much T1 holds",
      story: "Racks and basket take room, so the bath is smaller than the box.",
      parts: [
        number("length", "Inside length", 48, "in"),
        number("width", "Inside width", 24, "in"),
        number("depth", "Depth of liquid at the fill line", 25, "in"),
        number("racks", "Taken up by racks and transducers", 3.5, "US gal"),
        result(
          "How much bath does T1 hold at the line?",
          "=BATH.TANKVOLUME([length], [width], [depth], [racks])",
          "US gal",
          "0.00",
          "volume",
        ),
        result("The same in liters", '=BATH.UNITCONVERT([volume], "US gal", "L")', "L", "0.0", "liters"),
      ],
    },
    {
      caption: "What a fall of the level is worth",
      story: "At the end of the day the level stands lower. Depth is then the change of level.",
      parts: [
        number("fall", "Fall of the level by 15:00", 0.6, "in"),
        result(
          "How much liquid has left T1?",
          "=BATH.TANKVOLUME([length], [width], [fall])",
          "US gal",
          "0.00",
          "levelLoss",
        ),
      ],
    },
    {
      caption: "The round rinse drum",
      story: "An upright drum, measured inside from wall to wall.",
      parts: [
        number("diameter", "Inside diameter", 22.5, "in"),
        number("drumDepth", "Depth of liquid", 28, "in"),
        result("How much water is in the drum?", "=BATH.ROUNDTANKVOLUME([diameter], [drumDepth])", "US gal", "0.00"),
      ],
    },
  ],
};
