import type { TableId } from "./formula/log-types.ts";

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
  2: {
    names: [
      "Shop.Name", "Job.Number", "Job.Started", "Unit.System", "Recovery.Tolerance", "Temperature.Gap", "House.Share", "TopUp.Growth",
      "TopUp.Limit", "Log.Version", "Chart.Bath", "Share.Bath", "Share.Basis", "Pool.Total", "Shares.Total", "Shares.Check", "Loads.LeftOut",
      "Shop.Total", "Not.Allocated", "Statement.Claim", "Statement.Loss", "Statement.Insurer", "Statement.Adjuster", "Statement.Arrived",
      "Statement.Shop", "Statement.Job", "Statement.Cost", "Statement.By", "Statement.Date", "WhatIf.Volume", "WhatIf.Concentrate",
      "WhatIf.Bath", "WhatIf.Baseline", "WhatIf.Temperature", "WhatIf.Opening", "WhatIf.Builder", "WhatIf.Drop", "WhatIf.BaselineUsed",
      "WhatIf.TemperatureUsed", "WhatIf.OpeningUsed", "WhatIf.DropUsed", "WhatIf.BuilderUsed", "WhatIf.AlkalinityUsed", "Drop.Usual",
      "Reading.Hours", "Bath.Life", "Meter.CheckDays", "Meter.Limit", "Slope.Low", "Slope.High", "Weight.Light", "Weight.Medium",
      "Weight.Heavy", "Economic.Share", "Sewer.Low", "Sewer.High", "Sewer.Permit", "Notes.Version", "Own.RecoveryTolerance",
      "Own.TemperatureGap", "Own.HouseShare", "Own.TopUpGrowth", "Own.TopUpLimit", "Own.DropUsual", "Own.ReadingHours", "Own.BathLife",
      "Own.MeterCheckDays", "Own.MeterLimit", "Own.SlopeLow", "Own.SlopeHigh", "Own.WeightLight", "Own.WeightMedium", "Own.WeightHeavy",
    ],
    charts: ["Bathsheet.pH", "Bathsheet.Concentrate", "Bathsheet.Cost", "Bathsheet.Shares"],
    columns: {
      claims: [
        "claim", "loss", "insurer", "adjuster", "arrived", "note",
      ],
      tanks: [
        "tank", "length", "width", "fillDepth", "displacement", "heater", "dragOut", "note", "workingVolume", "volumePerDepth",
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
        "lastReadingAt", "lastVerdict", "topUpTotal", "topUpShare", "firstRound", "largestRound", "changeOut", "cost", "daysOpen", "loads",
        "degassed", "foilTest", "drained", "hardnessNow", "bicarbonateBrought", "ratioFirst", "ratioLast", "ageSignal", "tankRow",
        "waterRow", "concentrateRow", "builderUsed", "dropUsed", "baselineAsRead", "alkalinityUsed", "lastOpening", "lastConcentrate",
        "lastAddition", "lastReadingRow", "firstRoundAt",
      ],
      benchTests: [
        "id", "bath", "when", "strength", "water", "surface", "method", "dwell", "result", "note", "initials", "standing", "bathRow",
        "supersededAt",
      ],
      readings: [
        "id", "bath", "when", "purpose", "ph", "temperature", "trigger", "verdict", "firstAddition", "meter", "level", "conductivity",
        "pTitre", "tTitre", "initials", "note", "phCorrected", "verdictAsRead", "flag", "phAtBaseline", "topUpLow", "topUpBest", "topUpHigh",
        "alkalinityRatio", "benchAtTime", "checkRow", "checkBefore", "checkAfter", "errorBefore", "errorAfter", "bathRow", "lastConcentrate",
        "counted", "countedBelow", "countedBelowAsRead", "chartPh", "chartBaseline", "chartTrigger", "readBefore", "roundStart",
        "roundAmount",
      ],
      additions: [
        "id", "bath", "when", "kind", "purpose", "amount", "water", "account", "phBefore", "phAfter", "minutesMixed", "levelBefore",
        "levelAfter", "initials", "note", "cost", "runningTotal", "recovery", "nextAddition", "evaporated", "carriedOut", "concentrateDue",
        "hardnessCarried", "bicarbonateCarried", "bathRow", "waterRow", "price", "waterBefore", "levelLoss", "dragOut", "loadsSince",
        "drainedSince", "strength", "concentrate", "day", "issueKey", "dayIssue", "daysBelow", "statementOrder", "chartTotal", "chartCost",
      ],
      loads: [
        "id", "bath", "claim", "when", "baskets", "soil", "minutes", "area", "rework", "initials", "note", "counted", "weighted",
        "basketMinutes", "check", "bathRow", "claimRow", "order", "firstOfClaim", "entry", "entryKey", "statementOrder",
      ],
      itemCounts: [
        "claim", "received", "pieces", "difference", "balance", "restored", "handCleaned", "notRestorable", "returned", "pending",
      ],
      items: [
        "id", "claim", "room", "quantity", "item", "material", "condition", "pre1980", "route", "bath", "outcome", "reason", "reasonText",
        "replacementValue", "restoreCost", "photo", "note", "standing", "economic", "check", "keepOut", "inBath", "statementOrder",
      ],
      meterChecks: [
        "id", "when", "meter", "buffer1", "asFound1", "mv1", "buffer2", "asFound2", "mv2", "temperature", "asLeft1", "asLeft2", "bufferLot",
        "initials", "note", "error1", "error2", "slope", "verdict", "since", "readingsReached", "verdictsFlipped", "due", "found", "left",
        "key", "nextAt", "nextDrift",
      ],
      care: [
        "id", "bath", "when", "kind", "amount", "destination", "minutes", "rinsePh", "rinseConductivity", "result", "initials", "note",
        "concentrateLost", "aboveWater", "bathRow",
      ],
      stockBalance: [
        "concentrate", "leadDays", "safety", "lastCount", "counted", "received", "used", "book", "dailyUse", "daysLeft", "reorderAt",
        "reorder",
      ],
      stockMoves: [
        "id", "when", "concentrate", "kind", "amount", "price", "document", "lot", "initials", "note", "book", "variance", "day",
        "countBefore",
      ],
      releases: [
        "id", "bath", "when", "volume", "ph", "temperature", "alkalinity", "acid", "purity", "target", "acidNeeded", "acidBasis",
        "firstStage", "corrosive", "stage1", "phAfter1", "stage2", "phAfter2", "stage3", "phAfter3", "limitLow", "limitHigh", "permit",
        "analyses", "analysesResult", "releasedAt", "releasedVolume", "point", "retainedUntil", "initials", "note", "lastPh", "limitCheck",
        "state", "lowUsed", "highUsed", "permitUsed", "bathRow", "builderUsed",
      ],
      shares: [
        "claim", "units", "unitsUsed", "unitsCheck", "weight", "share", "loads", "baskets", "weightedBaskets", "basketMinutes", "entered",
        "firstLoad", "lastLoad", "separation",
      ],
      costLines: [
        "id", "bath", "date", "what", "document", "amount", "account",
      ],
      statementBaths: [
        "bath", "water", "tank", "strength", "baseline", "trigger", "opened", "benchTests", "closed", "line", "sourceRow", "bathRow",
      ],
      statementUse: [
        "bath", "shared", "first", "last", "loads", "readings", "lowest", "verdicts", "toppedUp", "line", "sourceRow", "claims", "from",
        "until",
      ],
      statementTopUps: [
        "bath", "when", "purpose", "amount", "phBefore", "phAfter", "recovery", "note", "account", "line", "sourceRow",
      ],
      statementCounts: [
        "pieces", "balance", "restored", "handCleaned", "notRestorable", "returned", "pending", "value", "reasonMissing",
      ],
      statementItems: [
        "id", "item", "quantity", "room", "condition", "reason", "replacementValue", "reasonText", "photo", "line", "sourceRow",
      ],
      statementShares: [
        "bath", "basis", "claims", "units", "allUnits", "part", "pool", "how", "share", "line", "sourceRow", "shareRow",
      ],
      whatIfCard: [
        "temperature", "baselineThere", "trigger",
      ],
      whatIfTopUps: [
        "fall", "reading", "low", "best", "high", "first",
      ],
      whatIfDoses: [
        "strength", "half", "full", "oneAndHalf", "twice",
      ],
      whatIfWaters: [
        "water", "hardness", "alkalinity", "forHardness", "forAlkalinity", "together",
      ],
      people: [
        "initials", "name", "note",
      ],
      noteLines: [
        "topic", "note", "source",
      ],
    },
  },
};
