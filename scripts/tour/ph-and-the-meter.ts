import { moment } from "../../tests/demo/demo-week-times.ts";
import { tourDay } from "./tour-day.ts";
import { number, result, text, type TourSheet } from "./tour-sheet.ts";

export const phAndTheMeter: TourSheet = {
  id: "meter",
  name: "pH and the meter",
  clock: "11:00",
  title: "11:00  pH and the meter",
  story: "Before anyone reads the hot bath, MV checks meter M-1 in two buffers at the temperature of the room.",
  tabColor: "#4A6A8A",
  steps: [
    {
      caption: "What the buffers are worth today",
      story: "A buffer changes with temperature: the figure on the bottle holds at 25 °C.",
      parts: [
        number("room", "Temperature of the buffers", 68, "°F"),
        text("near", "First buffer", "phosphate", {
          choices: ["phthalate", "phosphate", "phosphate 7.4", "borax", "carbonate", "lime"],
        }),
        text("far", "Second buffer", "carbonate", {
          choices: ["phthalate", "phosphate", "phosphate 7.4", "borax", "carbonate", "lime"],
        }),
        result("pH of the first buffer", "=BATH.BUFFERPH([near], [room])", "pH", "0.000", "nearPh"),
        result("pH of the second buffer", "=BATH.BUFFERPH([far], [room])", "pH", "0.000", "farPh"),
      ],
    },
    {
      caption: "Is the electrode still good?",
      story: "The slope is compared with theory. Many shops clean or replace below a limit of their own, such as 95 %.",
      parts: [
        number("nearMv", "In the first buffer", 4.1, "mV", { format: "0.0" }),
        number("farMv", "In the second buffer", -175.3, "mV", { format: "0.0" }),
        result(
          "Slope, 100 is a perfect electrode",
          "=BATH.METERSLOPE([nearPh], [nearMv], [farPh], [farMv], [room])",
          "%",
          "0.0",
        ),
      ],
    },
    {
      caption: "A reading corrected by two buffers",
      story: "The first reading was taken before the meter was adjusted.",
      parts: [
        number("nearRead", "Read in the first buffer", 6.9, "pH", { format: "0.00" }),
        number("farRead", "Read in the second buffer", 10.01, "pH", { format: "0.00" }),
        number("reading", "Read in the cooled sample of T1", 11.35, "pH", { format: "0.00" }),
        result(
          "What the sample was",
          "=BATH.METERFIX([reading], [nearPh], [nearRead], [farPh], [farRead])",
          "pH",
          "0.00",
        ),
      ],
    },
    {
      caption: "A reading of last week, with the drift taken out",
      story:
        "Each check found what the meter had drifted by since it was adjusted. Friday's reading looked higher than it was.",
      parts: [
        {
          kind: "list",
          id: "checks",
          columns: [
            { id: "check", header: "Check of M-1", format: "@" },
            { id: "checkTimes", header: "At", format: "yyyy-mm-dd hh:mm" },
            { id: "errors", header: "Error, pH", format: "0.00" },
          ],
          rows: [
            ["Last week, then adjusted", moment(3, "08:05"), 0.02],
            ["This morning, as found", moment(tourDay, "10:50"), 0.12],
          ],
        },
        number("driftReading", "Reading on Friday", 10.97, "pH", { format: "0.00" }),
        number("driftWhen", "Read at", moment(4, "16:30"), "", { format: "yyyy-mm-dd hh:mm" }),
        result(
          "What the bath was then",
          "=BATH.DRIFTFIX([driftReading], [driftWhen], [checkTimes], [errors])",
          "pH",
          "0.00",
        ),
      ],
    },
    {
      caption: "Hot and cold, the same bath",
      story: "A perfect meter reads less in the hot tank although nothing is used up. This is why samples are cooled.",
      parts: [
        result("pH of the cooled sample, from Charge", "=[charge.ph]", "pH", "0.00", "coldPh"),
        number("coldAt", "Read at", 77, "°F"),
        number("hotAt", "Tank", 131, "°F"),
        result("What the meter would read in the tank", "=BATH.PHAT([coldPh], [coldAt], [hotAt])", "pH", "0.00"),
      ],
    },
  ],
};
