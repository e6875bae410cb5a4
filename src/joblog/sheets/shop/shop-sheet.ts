import { usualDrop } from "../../../core/bath/common-practice.ts";
import type { FieldDefinition, SheetDefinition } from "../../model/definition.ts";
import { everywhere } from "../../model/everywhere.ts";
import { peopleTable } from "./people-table.ts";
import { between, days, hours } from "../../model/units-of.ts";

const fields: readonly FieldDefinition[] = [
  { id: "usualDrop", name: "Drop.Usual", label: "Drop allowed, pH", type: "number", format: "0.00", limits: between(0.05, 3), initial: everywhere(usualDrop), help: "Fall from the baseline at which a top-up is due, where the bath says nothing else (common practice, no source)." },
  { id: "readingHours", name: "Reading.Hours", label: "Read at least every", type: "number", unit: hours, format: "0", limits: between(1, 48), initial: everywhere(8), help: "A bath in use that was not read for longer is overdue (common practice, no source)." },
  { id: "bathLife", name: "Bath.Life", label: "Bath old after", type: "number", unit: days, format: "0", limits: between(1, 60), initial: everywhere(7), help: "In daily use rarely over a week, as a technical note on alkaline tanks has it." },
  { id: "meterCheckDays", name: "Meter.CheckDays", label: "Check the meter every", type: "number", unit: days, format: "0", limits: between(1, 31), initial: everywhere(7), help: "A meter not checked for longer is overdue (common practice, no source)." },
  { id: "meterLimit", name: "Meter.Limit", label: "Meter off by at most, pH", type: "number", format: "0.00", limits: between(0.01, 0.5), initial: everywhere(0.05), help: "As found in a buffer. An ASTM method, D1287, uses 0.05 on the second buffer." },
  { id: "slopeLow", name: "Slope.Low", label: "Electrode slope at least", type: "number", format: '0"%"', limits: between(70, 100), initial: everywhere(95), help: "Of the theoretical slope. 95 to 105 % is common practice, no source; one published guide allows 85 %." },
  { id: "slopeHigh", name: "Slope.High", label: "Electrode slope at most", type: "number", format: '0"%"', limits: between(100, 120), initial: everywhere(105), help: "Of the theoretical slope." },
  { id: "weightLight", name: "Weight.Light", label: "Basket of light soil counts", type: "number", format: "0.0#", limits: between(0.1, 20), initial: everywhere(1), help: "Weight in the share by soil (common practice, no source)." },
  { id: "weightMedium", name: "Weight.Medium", label: "Basket of medium soil counts", type: "number", format: "0.0#", limits: between(0.1, 20), initial: everywhere(2), help: "Weight in the share by soil (common practice, no source)." },
  { id: "weightHeavy", name: "Weight.Heavy", label: "Basket of heavy soil counts", type: "number", format: "0.0#", limits: between(0.1, 20), initial: everywhere(3), help: "Weight in the share by soil (common practice, no source)." },
  { id: "economicShare", name: "Economic.Share", label: "Restoring may cost at most", type: "share", format: "0%", limits: between(0.01, 2), help: "Of the replacement cost, as agreed with the insurer; blank until agreed." },
  { id: "sewerLow", name: "Sewer.Low", label: "Discharge pH at least", type: "number", format: "0.0#", limits: between(0.1, 14), help: "From your own permit or local code. Blank until you have it: there is no usual value." },
  { id: "sewerHigh", name: "Sewer.High", label: "Discharge pH at most", type: "number", format: "0.0#", limits: between(0.1, 14), help: "From your own permit or local code. Blank until you have it: there is no usual value." },
  { id: "permit", name: "Sewer.Permit", label: "Permit or code", type: "text", help: "Reference of the permit or of the local code that gives these limits." },
];

export const shopSheet: SheetDefinition = {
  id: "shop",
  name: "Shop",
  title: "The shop's own limits and people",
  purpose: "Limits that the log holds readings, meters and releases to. Every default is common practice where no source is named: set your own.",
  caution: "Where alkali or acid is handled, an eyewash and a drench shower stand ready in the work area for immediate use (29 CFR 1910.151(c)): within 10 seconds' reach and with 15 minutes of flow (ANSI/ISEA Z358.1). Keep the SDS at hand on every shift and the assessment of protective equipment in writing (29 CFR 1910.132(d)).",
  fields,
  tables: [peopleTable],
  arrangement: "stacked",
  tabColor: "#3E6B73",
  pagesWide: 1,
  orientation: "landscape",
};
