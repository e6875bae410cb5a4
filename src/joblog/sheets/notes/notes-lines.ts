import { textInput } from "../../model/columns.ts";
import type { LogRow, TableDefinition } from "../../model/definition.ts";

function line(topic: string, note: string, source: string): LogRow<"noteLines"> {
  return { topic, note, source };
}

const formulas: readonly LogRow<"noteLines">[] = [
  line(
    "Tank",
    "Inside length × width × fill depth, less what racks take up; 231 cubic inches to the US gallon.",
    "exact definition",
  ),
  line(
    "Dose",
    "1+40 is one part and 40 parts of water: volume / 41. Written 1 in 40 it is volume / 40.",
    "arithmetic; the trade's reading of a ratio",
  ),
  line(
    "Hardness",
    "Volume × (hardness − what the label allows for) / capacity of the concentrate.",
    "arithmetic; capacity from the maker or a jar test",
  ),
  line(
    "Bicarbonate",
    "Volume × alkalinity / 50.043 mg per milliequivalent: one eq of it uses up one of hydroxide.",
    "molar mass of CaCO3; Standard Methods 2320 B uses 50,000 mg/eq",
  ),
  line("Baseline", "Median of at least three readings after every bench surface passed.", "trade rule"),
  line(
    "Trigger",
    "Baseline less the drop allowed, as the bath would read it at the sample's temperature.",
    "0.5 is common practice, no source; ion product of water: CRC Handbook",
  ),
  line(
    "Temperature",
    "The same bath reads about 0.7 pH lower at 50 °C than at 25 °C with a perfect meter: the solution changes, not the electrode.",
    "ion product of water: CRC Handbook; EPA Method 9040",
  ),
  line(
    "Meter drift",
    "Slope and offset: the straight line through a check's two buffers gives the error at the reading's own pH, and it is taken as even from one check to the next. Nothing is corrected before the later check is recorded.",
    "arithmetic; above the higher buffer the line is drawn on, and a knock changes a meter at once, so look at such readings again",
  ),
  line(
    "Electrode slope",
    "100 × mV between buffers / pH between them / (0.198416 mV/K × temperature).",
    "Nernst equation",
  ),
  line(
    "Top-up",
    "Concentrate that brings the bath back, between soil as acid and drag-out as dilution, over the builders that the label leaves open. First addition: the smaller of the best figure and the shop's share of the opening dose.",
    "equilibrium by Bathsheet; the share is common practice, no source",
  ),
  line(
    "Make up to the line",
    "Dragged out or drained: loads × drag-out + drained; the rest evaporated. Concentrate due: what was dragged out or drained × strength.",
    "arithmetic; drag-out by weighing or metering a few loads",
  ),
  line(
    "Total to free alkalinity",
    "T titration over P titration. It rises as soap from soil builds up while additions hold the pH.",
    "published practice is to watch it; the limit is the shop's own",
  ),
  line(
    "Acid",
    "From a titration to pH 4.5 and the reading; without one from the alkali that water and concentrate brought less what left, an estimate, or else from the reading alone, a minimum. 60 %, then 30 %, then the rest.",
    "equilibrium by Bathsheet; stages are common practice, no source",
  ),
  line("Corrosive waste", "pH 2 or less, or 12.5 or more.", "40 CFR 261.22"),
  line("Cost shares", "Largest remainder: shares add up to the cent.", "arithmetic"),
];

const limits: readonly LogRow<"noteLines">[] = [
  line("Does not know", "What the label, the SDS and the permit say: they win.", ""),
  line("Does not know", "Whether a piece can stand alkali, heat or ultrasound: the bench test answers.", ""),
  line("Does not know", "Mixing, dirt on the electrode, or soil that no reading shows.", ""),
  line("Keep", "Discharge records at least three years; a permit may ask for more.", "40 CFR 403.12(o)"),
];

export const noteLines: TableDefinition = {
  id: "noteLines",
  name: "NoteLines",
  caption: "What the figures rest on; add lines of your own",
  emptyRows: formulas.length + limits.length + 3,
  start: () => [...formulas, ...limits],
  columns: [
    textInput({ id: "topic", label: "About", width: 31, required: true, help: "What the line is about." }),
    textInput({
      id: "note",
      label: "Note",
      width: 62,
      required: true,
      help: "How it is worked out, or what to bear in mind.",
    }),
    textInput({ id: "source", label: "Source", width: 38, help: "Where it comes from." }),
  ],
};
