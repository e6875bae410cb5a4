/** Words that cells hold and formulas compare; each list is the whole of a choice column. */
export const readingPurposes = ["baseline", "check", "after top-up", "rinse"] as const;
export const additionKinds = ["concentrate", "water"] as const;
export const additionPurposes = ["opening", "top-up", "make-up", "corrective"] as const;
export const accounts = ["claims", "shop"] as const;
export const benchResults = ["pass", "partial", "fail"] as const;
export const builders = ["unknown", "hydroxide", "silicate", "carbonate", "phosphate"] as const;
export const surfaces = [
  "metal",
  "plastic",
  "sealed wood",
  "smooth ceramic or glass",
  "unglazed or textured",
  "painted or decorated",
  "other",
] as const;
export const benchMethods = ["wipe test", "dwell and wipe", "trial load"] as const;
export const closeReasons = [
  "bench test fails at the baseline",
  "top-ups over the shop's limit",
  "age",
  "odor",
  "oil or solids",
  "end of a flagged claim",
  "job done",
] as const;
export const shareBases = ["baskets", "soil-weighted baskets", "basket-minutes"] as const;

/** Codes of ISO 4217 whose unit has a hundred parts: shares are worked out in them. From memory; no list was at hand. */
export const currencies = [
  "USD",
  "CAD",
  "AUD",
  "NZD",
  "GBP",
  "EUR",
  "CHF",
  "SEK",
  "NOK",
  "DKK",
  "PLN",
  "CZK",
  "MXN",
  "BRL",
  "ZAR",
  "SGD",
  "ILS",
] as const;

/** What a cost line was for. */
export const costKinds = ["labor", "energy", "water", "supplies", "disposal", "other"] as const;

/** What a line of the journal is about: who pays, or where the cost came from. Each has an account of the shop's books. */
export const ledgerUses = [
  "claims",
  "shop",
  "concentrate",
  "water",
  "labor",
  "energy",
  "supplies",
  "disposal",
  "other",
] as const;

/** How far the cost of a bath is placed; a provisional one says after the colon why. */
export const costStanding = { placed: "placed to the cent", provisional: "provisional: " } as const;

/** Whether what a claim pays can still change. */
export const claimCost = { placed: "placed", provisional: "provisional" } as const;

export const yesNo = ["yes", "no"] as const;
export const soilGrades = ["light", "medium", "heavy"] as const;
export const routes = ["bath", "hand", "specialist", "none"] as const;
/** An item without an outcome is pending. */
/** Why a piece stays out of the bath, by a word of its line. */
export const keepOutKinds = ["hazard", "metal"] as const;

/** How much of a text has to be the word. */
export const wordCounts = ["whole word", "beginning"] as const;

export const outcomes = ["restored", "not restorable", "returned uncleaned"] as const;
export const reasonCodes = [
  "BURN",
  "MELT",
  "WARP",
  "POROUS",
  "DELAM",
  "SAFETY",
  "HAZMAT",
  "LABEL",
  "AMPHOTERIC",
  "ODOR",
  "COST",
  "OWNER",
] as const;
/** What became of an item, as its line says it and the counts add it up. */
export const itemStandings = {
  pending: "pending",
  restored: "restored",
  handCleaned: "hand cleaned",
  specialist: "specialist",
  notRestorable: "not restorable",
  reasonMissing: "reason missing",
  returned: "returned uncleaned",
  unknown: "no such outcome",
} as const;
export const careKinds = ["skim", "filter", "drain", "rinse check", "degas", "foil test"] as const;
export const stockKinds = ["count", "receipt", "issue"] as const;
export const analysesResults = ["within limits", "over a limit", "awaited", "none required by permit"] as const;

/** How far the bench tests of a bath stand. */
export const bench = {
  noCharge: "no charge yet",
  untested: "no test since the last concentrate",
  refused: "not accepted",
  accepted: "accepted",
} as const;

/** What a reading says about its bath: what VERDICT answers, and why it was not asked. */
export const readingVerdict = {
  hold: "hold",
  near: "near",
  topUp: "top up",
  /** After a top-up: above the trigger, and short of the baseline all the same. */
  notBack: "not back yet",
  reRead: "re-read",
  above: "above baseline",
  /** A slip is likelier than such a bath: nothing is worked out until somebody says that it was read so. */
  check: "check the reading",
  baseline: "baseline",
  noBaseline: "no baseline yet",
  noTemperature: "temperature missing",
  /** How it begins on a row that the log cannot use. */
  uncounted: "not counted",
} as const;

/** Why a reading is to be checked. */
export const readingCheck = {
  ph: "pH far from the reading before and from the baseline",
  temperature: "cold for a sample: was it °C?",
} as const;

/** That a reading which looks like a slip was read so. */
export const readSo = ["yes"] as const;

/** How the flag begins of a reading that says something else once the meter's drift is taken out. */
export const verdictChanged = "verdict changed by the meter's drift";

/** Whether a fresh fill was rid of its air in time. */
export const degassing = { done: "degassed", none: "not degassed", late: "after the first load" } as const;

/** A month that begins, or ends, before the first count has no book. */
/** What is open of an average that is written down. */
export const averageWords = {
  noPrice: "price missing",
  notWritten: "not written down",
  another: "another follows from the lines before",
} as const;

/** What an addition is priced by. */
export const costBases = {
  posted: "posted",
  average: "average then, not posted",
  pack: "pack price, not posted",
  water: "water price, not posted",
} as const;

export const monthEndWords = { notCounted: "not counted before" } as const;

/** How far a release is; no word says that it is allowed. */
export const releaseState = {
  limits: "not released: limits missing",
  ph: "not released: no pH",
  below: "not released: pH below the limits",
  above: "not released: pH above the limits",
  over: "not released: a result over its limit",
  results: "not released: results awaited",
  entered: "limits and results entered",
  incomplete: "released, but volume, place, permit or person missing",
  released: "released",
} as const;

/** What a meter check says, against the shop's own limits. */
export const meterVerdict = {
  within: "within limits",
  asFound: "as found out of limits",
  slope: "slope out of limits",
  incomplete: "incomplete",
} as const;

/** How the balance of a claim's pieces begins where it comes out even, with a count at the door and without. */
export const balanceWords = { balances: "balances", notCounted: "not counted in" } as const;

/** How a bath came back after an addition. */
export const recovery = { recovered: "recovered", short: "short", over: "over" } as const;

/** A strength held to the highest that the concentrate's label names. */
export const labelCheck = {
  within: "within the label",
  wanted: "strength wanted is above the label's highest",
  poured: "more poured than the label's highest takes",
} as const;

/** Whether what went in fits the tank. */
export const tankRoom = { fits: "fits", overLine: "over the fill line", overRim: "over the rim" } as const;

/** What the acid of a release was worked out from. */
export const acidBases = {
  titration: "titration",
  logged: "water and concentrate logged: an estimate",
  partly: "concentrate logged, water not tested: a minimum",
  ph: "pH alone: a minimum",
} as const;

/** Why a bath may be past topping up. */
export const changeOut = {
  grow: "top-ups grow: consider a change-out",
  total: "top-ups have reached the limit: consider a change-out",
} as const;

/** What a bath needs next. */
export const bathState = {
  charge: "charge",
  benchTest: "bench test",
  baseline: "baseline",
  inUse: "in use",
  topUp: "top up",
  reRead: "re-read",
  closed: "closed",
} as const;

/** How far a baseline is. Where one is written down that its readings do not give, the figure that they give follows in the cell. */
export const baselineStanding = {
  set: "set",
  differ: "temperatures differ",
  /** Enough readings, and nobody has written the baseline down. */
  unwritten: "to be written down",
  noTemperature: "its temperature is missing",
  /** Written down before the last opening dose, so of another bath than the one in the tank. */
  older: "older than the opening dose",
  /** Nothing in the log bears it out. */
  noReadings: "no readings give it",
  /** How it begins where its readings give another pH, or were of another temperature. */
  otherPh: "readings give",
  otherTemperature: "readings were at",
} as const;

/** Cost to restore against the agreed share of the replacement value. */
export const economicTest = { within: "within the share", over: "over the share" } as const;

/** What stands instead of a split of what a bath lost. */
export const moreLeft = "more left than the level fell: check";

/** What stands where a figure of the water would be needed. */
export const waterNotTested = "water not tested";

/** Whether the book of a concentrate has come down to where it is reordered. */
export const stockLevel = { reorder: "reorder", enough: "enough" } as const;
