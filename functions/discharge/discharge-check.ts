import { placeAmongLimits } from "../../src/core/discharge/release-limits.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { optionalQuantity } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";

export const dischargeCheck = defineFunction({
  id: "DISCHARGECHECK",
  category: "Discharge",
  summary:
    "Where a pH lies among your own release limits: within, below or above. It never says that a release is allowed.",
  arguments: [
    phReading("ph", "pH of the neutralized, mixed and aerated bath"),
    phReading("low", "lowest pH that your permit allows; at least 5.0, the federal floor"),
    phReading(
      "high",
      "highest pH that your permit allows; at most 12.4, since 12.5 is hazardous waste (D002) and no meter decides within 0.1",
    ),
    optionalQuantity("temperature", {
      kind: "temperature",
      help: "temperature of the sample; above 104 °F (40 °C) it is refused: let it cool and read again. Not judged if left out",
      ofSample: true,
    }),
    system,
  ],
  result: {
    excelType: "string",
    dimensionality: "scalar",
    help: '"within", "below" or "above"; a limit itself is within',
  },
  examples: [
    {
      formula: "=BATH.DISCHARGECHECK(4.9,5,9)",
      cells: [4.9, 5, 9],
      result: "below",
      source: "40 CFR 403.5(b)(2): nothing below pH 5.0 to a sewer",
    },
    {
      formula: '=BATH.DISCHARGECHECK(8.5,6,11,"75 F")',
      cells: [8.5, 6, 11, "75 F"],
      result: "within",
      source: "6.0 and 11.0 stand for local limits: an example, no source",
    },
  ],
  notes: [
    "Within is not permission: a permit may ask for metals, oil, volume, notice or a sample first.",
    "Federal law sets a floor of pH 5.0 (40 CFR 403.5(b)(2)) and no ceiling; local law sets one. Write your own limits: none are built in.",
    "104 °F is the federal limit where the sewer reaches the treatment plant (40 CFR 403.5(b)(5)); a local limit at your drain may be lower. A hot alkaline sample reads lower than a cool one: a pH that is within when hot may be above at 25 °C.",
    "A neutralized bath climbs back as carbon dioxide leaves: aerate and read again before anything is released.",
  ],
  source: "Compares with your limits; 40 CFR 403.5(b)(2) and (b)(5) for the cautions.",
  compute: ([reading, low, high, temperature]) => placeAmongLimits(reading, { low, high }, temperature),
});
