import type { TableId } from "../../../src/joblog/formula/log-types.ts";
import type { Cells, LogContent, LogRow } from "../../../src/joblog/model/definition.ts";
import { contentOf } from "../../../src/joblog/model/log-content.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { bathOne, bathTwo, march } from "../../../src/pane/demo/week-event.ts";
import { serial } from "../week/played-week.ts";

/**
 * A reading that looks like a slip, one of no bath, a second round of top-ups, which takes more than the first, water where
 * the level did not fall, a foil test, a worn electrode, a release that is only begun, and pieces that lack something.
 */
const moreRows: LogContent["rows"] = {
  readings: [
    { id: "R900", bath: bathOne, when: serial(march(5, "17:50")), purpose: "check", ph: 1.12, temperature: 77 },
    { id: "R901", bath: bathOne, when: serial(march(5, "18:00")), purpose: "check", ph: 10.6, temperature: 77 },
    {
      id: "R902",
      bath: bathOne,
      when: serial(march(5, "18:40")),
      purpose: "after top-up",
      ph: 11.35,
      temperature: 77,
      confirmed: "yes",
    },
    { id: "R903", bath: "nowhere", when: serial(march(5, "19:00")), purpose: "check", ph: 11, temperature: 77 },
  ],
  additions: [
    {
      id: "A901",
      bath: bathOne,
      when: serial(march(5, "18:20")),
      kind: "concentrate",
      purpose: "top-up",
      amount: 4.1,
      account: "claims",
      phBefore: 10.6,
      phAfter: 11.35,
    },
    { id: "A902", bath: bathTwo, when: serial(march(4, "18:20")), kind: "concentrate", purpose: "top-up", amount: 0.1 },
    {
      id: "A903",
      bath: bathOne,
      when: serial(march(5, "18:50")),
      kind: "water",
      purpose: "make-up",
      amount: 1,
      levelBefore: 24,
      levelAfter: 20,
    },
  ],
  loads: [
    { id: "L901", claim: "D-0436", when: serial(march(5, "18:10")), baskets: 1, soil: "light", minutes: 5 },
    // Before its bath was opened.
    {
      id: "L902",
      bath: bathTwo,
      claim: "D-0436",
      when: serial(march(1, "08:00")),
      baskets: 1,
      soil: "light",
      minutes: 5,
    },
  ],
  shares: [{ bath: bathTwo, claim: "nobody" }],
  costLines: [
    {
      id: "C901",
      bath: bathOne,
      what: "Pick-up",
      document: "P 1",
      date: serial("2027-03-05"),
      amount: 40,
      account: "claims",
      claim: "D-0436",
    },
    { id: "C903", what: "Postage", amount: 3, account: "claims" },
    { id: "C902", bath: "nowhere", what: "Delivery", amount: 20, account: "claims", claim: "D-0436" },
  ],
  closedMonths: [
    {
      month: serial("2027-02-01"),
      closedAt: serial(march(1, "09:00")),
      closedBy: "KT",
      reopenedAt: serial(march(2, "09:00")),
      reopenedBy: "KT",
      why: "late invoice",
    },
  ],
  journal: (["claims", "labor"] as const).map((use) => ({
    posting: "P001",
    date: serial("2027-03-09"),
    month: "2027-03",
    document: bathOne,
    code: "1200",
    accountName: "Work in process",
    use,
    claim: "D-0436",
    bath: bathOne,
    text: "share",
    quantity: 10,
    unit: "baskets",
    debit: use === "claims" ? 5 : undefined,
    credit: use === "labor" ? 5 : undefined,
    postedBy: "KT",
    postedAt: serial(march(6, "09:00")),
    reverses: "P000",
    why: "slip",
  })),
  items: [
    { id: "I901", claim: "D-0436", quantity: 1, item: "aluminum pot", route: "bath", bath: bathTwo },
    { id: "I902", claim: "D-0436", quantity: 1, item: "rug", route: "none", outcome: "restored" },
    { id: "I903", claim: "D-0436", item: "box of cutlery" },
  ],
  meterChecks: [
    {
      id: "M901",
      when: serial(march(6, "15:30")),
      meter: "PH-1",
      buffer1: 7,
      asFound1: 7.02,
      mv1: 0,
      buffer2: 10,
      asFound2: 9.9,
      mv2: -120,
      temperature: 77,
    },
  ],
  releases: [{ id: "N901", bath: bathOne, when: serial(march(8, "08:00")), volume: 100 }],
  stockMoves: [{ id: "S901", when: serial(march(6, "15:00")), concentrate: "CN-1", kind: "receipt", amount: 5 }],
  monthEnd: [{ concentrate: "CN-9", month: serial("2027-03-31") }],
  care: [{ id: "K901", bath: bathTwo, when: serial(march(3, "11:30")), kind: "foil test", result: "even" }],
};

/** Cells that the invented week leaves blank, in every row of their table. */
const moreCells: { readonly [Table in TableId]?: LogRow<Table> } = {
  tanks: { height: 29 },
  waters: { price: 0.031 },
  baths: { builder: "carbonate", shareBasis: "baskets", settledAt: serial(march(9, "09:00")), settledBy: "KT" },
  claims: {
    policy: "HO-77",
    owner: "A. Invented",
    lossAddress: "1 Invented Street",
    lossDate: serial("2027-02-20"),
    invoice: "QH-9",
    preparedBy: "KT",
    preparedOn: serial("2027-03-09"),
    acceptedBy: "A. Invented",
  },
  ledger: { code: "6100", name: "Supplies" },
  items: { restoreCost: 40 },
  itemCounts: { received: 130 },
  meterChecks: { bufferLot: "B-1" },
  stockMoves: { lot: "L-1", expiry: serial("2028-03-01") },
  people: { note: "briefed" },
  releases: { purity: 99, limitLow: 6.5, limitHigh: 9.5, permit: "P-1" },
  shares: { units: 17 },
};

const moreFields: LogContent["fields"] = {
  bathLife: 2,
  economicShare: 0.8,
  shopAddress: "2 Invented Street",
  shopPhone: "555-0100",
  shopLicense: "L-9",
  monthOfTotals: serial("2027-03-15"),
  whatIfBath: bathOne,
  whatIfConcentrate: "CN-1",
  whatIfVolume: 121,
  whatIfBaseline: 11.4,
  whatIfTemperature: 77,
  whatIfOpening: 4.2,
  whatIfBuilder: "carbonate",
  whatIfDrop: 0.4,
};

/** What the played week leaves in its sheets, with every input that it leaves blank filled in, so that every formula has work to do. */
export function fullContent(log: LogSnapshot): LogContent {
  const { fields, rows } = contentOf(log);
  const cells: Readonly<Record<string, Cells>> = moreCells;
  const added: Readonly<Record<string, readonly Cells[]>> = moreRows;
  return {
    fields: { ...fields, ...moreFields },
    rows: Object.fromEntries(
      Object.entries<readonly Cells[]>(rows).map(([table, lines]) => [
        table,
        [...lines.map((line) => ({ ...line, ...cells[table] })), ...(added[table] ?? [])],
      ]),
    ),
  };
}
