import type { TableId } from "./definition.ts";

interface ReleasedShape {
  /** Excel names of the named cells. */
  readonly names: readonly string[];
  /** Ids of charts. */
  readonly charts: readonly string[];
  /** Column ids by table id. */
  readonly columns: Readonly<Partial<Record<TableId, readonly string[]>>>;
}

/**
 * What a released version of the log holds, by its version. A log of that version that lacks one of
 * these is damaged; whatever else today's log has is new since then. An entry never changes.
 */
export const releasedShapes: Readonly<Record<number, ReleasedShape>> = {
  1: {
    names: [
      "Shop.Name", "Job.Number", "Job.Started", "Unit.System", "Recovery.Tolerance", "Temperature.Gap", "House.Share", "TopUp.Growth",
      "TopUp.Limit", "Log.Version", "Chart.Bath", "Share.Bath", "Share.Basis", "Pool.Total", "Shares.Total", "Shares.Check",
    ],
    charts: ["Bathsheet.pH"],
    columns: {
      claims: [
        "claim", "loss", "insurer", "adjuster", "arrived", "note",
      ],
      tanks: [
        "tank", "length", "width", "fillDepth", "displacement", "heater", "note", "workingVolume", "volumePerDepth",
      ],
      waters: [
        "water", "name", "hardness", "alkalinity", "tds", "ph", "tested", "price", "hardnessClass",
      ],
      concentrates: [
        "concentrate", "description", "builder", "labelLight", "labelMedium", "labelHeavy", "labelHardness", "density", "capacity",
        "alkalinityStrength", "packVolume", "packPrice", "lot", "sdsOnFile", "unitPrice",
      ],
      baths: [
        "bath", "state", "tank", "water", "concentrate", "opened", "strength", "builder", "dropAllowed", "closed", "closeReason", "note",
        "workingVolume", "hardness", "alkalinity", "baseDose", "hardnessDose", "alkalinityDose", "plannedDose", "openingDose",
        "strengthReached", "benchState", "baselineReadings", "baselineState", "baselineTemperature", "baseline", "trigger", "lastReading",
        "lastReadingAt", "lastVerdict", "topUpTotal", "topUpShare", "firstRound", "largestRound", "changeOut", "cost", "daysOpen",
        "tankRow", "waterRow", "concentrateRow", "builderUsed", "alkalinityUsed", "lastOpening", "lastConcentrate", "lastAddition",
        "lastReadingRow", "firstRoundAt",
      ],
      benchTests: [
        "id", "bath", "when", "strength", "water", "surface", "method", "dwell", "result", "note", "initials", "standing", "bathRow",
        "supersededAt",
      ],
      readings: [
        "id", "bath", "when", "purpose", "ph", "temperature", "trigger", "verdict", "firstAddition", "meter", "level", "conductivity",
        "pTitre", "tTitre", "initials", "note", "phAtBaseline", "topUpLow", "topUpBest", "topUpHigh", "benchAtTime", "bathRow",
        "lastConcentrate", "counted", "countedBelow", "chartPh", "chartBaseline", "chartTrigger", "readBefore", "roundStart",
        "roundAmount",
      ],
      additions: [
        "id", "bath", "when", "kind", "purpose", "amount", "water", "account", "phBefore", "phAfter", "minutesMixed", "initials", "note",
        "cost", "runningTotal", "recovery", "nextAddition", "bathRow", "waterRow", "price",
      ],
      costLines: [
        "id", "bath", "date", "what", "document", "amount", "account",
      ],
      shares: [
        "claim", "units", "weight", "share",
      ],
    },
  },
};
