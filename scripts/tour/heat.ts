import { moment } from "../../tests/demo/demo-week-times.ts";
import { tourDay } from "./tour-day.ts";
import { number, result, type TourSheet } from "./tour-sheet.ts";

export const heat: TourSheet = {
  id: "heat",
  name: "Heat",
  clock: "07:40",
  title: "07:40  Heat",
  story: "Mixed and still cold, the bath is heated with the lid on. When can the first basket go in?",
  tabColor: "#9A5B3C",
  steps: [
    {
      caption: "Energy and time",
      story: "Water alone, without what the walls and the air take; the efficiency stands for those losses.",
      parts: [
        result("Bath volume, from Tank", "=[tank.volume]", "US gal", "0.00", "volume"),
        number("cold", "The bath now", 62, "°F"),
        number("hot", "Wash temperature", 131, "°F"),
        number("kilowatts", "Heaters of T1 together", 6, "kW", { format: "0.0" }),
        number("efficiency", "Share of it that ends in the water", 0.9, "", {
          format: "0%",
          note: "assumed; compare with your own clock",
        }),
        number("price", "Electricity", 0.142, "per kWh", { format: "0.000" }),
        number("start", "Heaters on", moment(tourDay, "07:40"), "", { format: "hh:mm" }),
        result("Energy in the hot bath", "=BATH.HEATENERGY([volume], [cold], [hot])", "kWh", "0.0", "energy"),
        result(
          "How long the heaters take",
          "=BATH.HEATTIME([volume], [cold], [hot], [kilowatts], [efficiency])",
          "h",
          "0.00",
          "hours",
        ),
        result("When is T1 hot?", "=[start]+[hours]/24", "", "hh:mm"),
        result("What the heating costs", "=[energy]/[efficiency]*[price]", "USD", "0.00"),
      ],
    },
  ],
};
