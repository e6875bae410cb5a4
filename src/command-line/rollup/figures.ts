/** How a figure's column is shown. Figures in cents come as cents and go out as amounts. */
type Look = "text" | "money" | "count" | "number" | "share";

export interface FigureColumn {
  /** Its name in the query. */
  readonly name: string;
  readonly header: string;
  readonly look: Look;
  readonly width: number;
}

/** A table of the group's workbook, worked out by the query of the same name. */
export interface Figure {
  readonly id: string;
  readonly query: string;
  readonly name: string;
  readonly purpose: string;
  readonly columns: readonly FigureColumn[];
}

const column = (name: string, header: string, look: Look, width: number): FigureColumn => ({
  name,
  header,
  look,
  width,
});

const shop = column("shop", "Shop", "text", 22);
const currency = column("currency", "Currency", "text", 10);
const cost = column("cost_cents", "Cost of baths", "money", 14);
const claimCost = column("claim_cents", "Paid by claims", "money", 14);
const washed = [column("loads", "Loads", "count", 9), column("baskets", "Baskets", "count", 9)];
const poured = [column("concentrate_liters", "Concentrate, L", "number", 13), column("top_ups", "Top-ups", "count", 9)];
const baths = column("baths", "Baths", "count", 9);
const judged = [
  column("baths_judged", "Baths judged", "count", 9),
  column("baths_growing", "Baths with growing top-ups", "count", 12),
];
const perBasket = [
  column("cents_per_basket", "Cost per basket", "money", 11),
  column("liters_per_basket", "Concentrate per basket, L", "number", 13),
];
const unpriced = column("unpriced", "Left out: rows without a cost", "count", 14);
const uncounted = column("uncounted", "Left out: loads without baskets", "count", 14);
const unmeasured = column("unmeasured", "Left out: concentrate without an amount", "count", 16);
const provisional = column("provisional", "Claims still provisional", "count", 12);

const anew =
  "Worked out anew from what is typed in the logs. Amounts in different currencies stand in lines of their own.";

export const figures: readonly Figure[] = [
  {
    id: "ByShop",
    query: "by-shop",
    name: "By shop",
    purpose: anew,
    columns: [
      shop,
      currency,
      cost,
      claimCost,
      ...washed,
      ...poured,
      baths,
      column("top_ups_per_bath", "Top-ups per bath", "number", 10),
      ...judged,
      column("growing_share", "Share of baths with growing top-ups", "share", 13),
      ...perBasket,
      unpriced,
      uncounted,
      unmeasured,
      provisional,
    ],
  },
  {
    id: "ByMonth",
    query: "by-month",
    name: "By month",
    purpose: `${anew} A bath counts in the month of its opening.`,
    columns: [
      shop,
      column("month", "Month", "text", 12),
      currency,
      cost,
      ...washed,
      ...poured,
      baths,
      ...perBasket,
      unpriced,
      uncounted,
      unmeasured,
    ],
  },
  {
    id: "ByClaim",
    query: "by-claim",
    name: "By claim",
    purpose: anew,
    columns: [shop, column("claim", "Claim", "text", 22), currency, claimCost, ...washed, uncounted, provisional],
  },
  {
    id: "ByBath",
    query: "by-bath",
    name: "By bath",
    purpose: anew,
    columns: [
      shop,
      column("file", "File", "text", 30),
      column("bath", "Bath", "text", 18),
      currency,
      cost,
      ...washed,
      ...poured,
      ...judged,
      ...perBasket,
      unpriced,
      uncounted,
      unmeasured,
    ],
  },
  {
    id: "ByConcentrate",
    query: "by-concentrate",
    name: "By concentrate",
    purpose: anew,
    columns: [shop, column("concentrate", "Concentrate", "text", 22), currency, cost, ...poured, unpriced, unmeasured],
  },
  {
    id: "BySoil",
    query: "by-soil",
    name: "By soil",
    purpose:
      "What a bath took is laid on its baskets alike, so soils differ by the baths that they went into. Loads of a bath that lacks a figure are left out.",
    columns: [
      shop,
      column("soil", "Soil", "text", 12),
      currency,
      ...washed,
      ...perBasket,
      column("liters_per_load", "Concentrate per load, L", "number", 13),
      column("loads_left_out", "Left out: loads of incomplete baths", "count", 14),
    ],
  },
  {
    id: "ByOutcome",
    query: "by-outcome",
    name: "By outcome",
    purpose: "Pieces by what became of them.",
    columns: [
      shop,
      column("outcome", "Outcome", "text", 22),
      column("pieces", "Pieces", "count", 9),
      column("unquantified", "Left out: items without a quantity", "count", 14),
    ],
  },
];
