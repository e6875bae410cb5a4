import { number, result, type TourSheet } from "./tour-sheet.ts";

export const moneyAndStock: TourSheet = {
  id: "money",
  name: "Money and stock",
  clock: "18:00",
  title: "18:00  Money and stock",
  story: "Three claims shared T1 today. Who pays what, and is there enough CN-1 for the week?",
  tabColor: "#8C6A4F",
  steps: [
    {
      caption: "What the concentrate cost",
      story: "A pail of CN-1, and what was poured into T1 today.",
      parts: [
        number("pailPrice", "Price of a pail", 139, "USD", { format: "0.00" }),
        number("pail", "Contents of the pail", 5, "US gal"),
        result("Opening dose, from Charge", "=[charge.openingDose]", "US gal", "0.000", "openingDose"),
        result("Topped up since, from Threshold and top-up", "=[topUp.toppedUp]", "US gal", "0.000", "toppedUp"),
        result("Price of a gallon", "=BATH.UNITPRICE([pailPrice], [pail])", "USD per US gal", "0.00", "perGallon"),
        result("Concentrate of the day", "=ROUND(([openingDose]+[toppedUp])*[perGallon], 2)", "USD", "0.00", "poured"),
      ],
    },
    {
      caption: "Shares that add up to the cent",
      story: "By baskets washed. Rounding each share by itself could lose or gain a cent.",
      parts: [
        {
          kind: "list",
          id: "claims",
          columns: [
            { id: "claim", header: "Claim", format: "@" },
            { id: "baskets", header: "Baskets", format: "0" },
          ],
          rows: [
            ["D-0427", 7],
            ["D-0431", 6],
            ["D-0436", 4],
          ],
        },
        number("other", "Water, power and labor of the bath", 96.4, "USD", { format: "0.00" }),
        result("To share out", "=[poured]+[other]", "USD", "0.00", "pool"),
        ...["D-0427", "D-0431", "D-0436"].map((claim, index) =>
          result(
            `=INDEX([claim], ${String(index + 1)})`,
            `=INDEX(BATH.SHARE([pool], [baskets]), ${String(index + 1)}, 1)`,
            "USD",
            "0.00",
            `share${claim.slice(2)}`,
          ),
        ),
        result("The shares together", "=SUM([share0427], [share0431], [share0436])", "USD", "0.00"),
      ],
    },
    {
      caption: "Is there enough CN-1?",
      story: "Counted on the shelf tonight, with what went out on the days before.",
      parts: [
        number("onHand", "On the shelf", 22.3, "US gal", { format: "0.0" }),
        number("dailyUse", "A working day takes", 2.1, "US gal", { format: "0.0" }),
        number("leadDays", "Working days from order to delivery", 5, "days"),
        number("safety", "Kept in reserve", 6, "US gal", { format: "0.0" }),
        {
          kind: "list",
          id: "issueList",
          columns: [
            { id: "issueDay", header: "Issued on", format: "@" },
            { id: "issues", header: "US gal", format: "0.00" },
          ],
          rows: [
            ["Wednesday", 1.7],
            ["Thursday", 3.2],
            ["Friday", 0.95],
            ["Monday", 0],
            ["Tuesday", 8.07],
          ],
        },
        result(
          "Order when the shelf is down to",
          "=BATH.REORDERPOINT([dailyUse], [leadDays], [safety])",
          "US gal",
          "0.0",
          "reorderAt",
        ),
        result("Order now?", '=IF([onHand]<=[reorderAt], "order", "not yet")', ""),
        result("Days left at the median issue", "=BATH.STOCKDAYS([onHand], [issues])", "days", "0.0"),
      ],
    },
  ],
};
