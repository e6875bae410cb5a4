import type { View } from "../frame/view-tabs.tsx";

interface TourStep {
  readonly view: View;
  readonly title: string;
  readonly text: string;
}

/** What a newcomer is shown, each step over the view that it tells of. */
export const tourSteps: readonly TourStep[] = [
  {
    view: "now",
    title: "Now: what the bath needs next",
    text: "One sentence says the next thing to do, and why. A reading is two figures, pH and the sample’s temperature; the verdict stands beside them before you record it. In a workbook without a log this is where you start one, look at an invented week, or take over your own sheet.",
  },
  {
    view: "record",
    title: "Record: a form for every entry",
    text: "In the order of the day, from the first charge to the release. A form works out what an entry means while you type, asks once about what looks like a slip, and keeps what you typed until you record or clear it. The last entry can be taken back.",
  },
  {
    view: "claims",
    title: "Claims: fair shares, to the cent",
    text: "What each claim pays of each bath, the statement for the adjuster, a copy of one claim that names no other, and the months for the books.",
  },
  {
    view: "more",
    title: "The sheets are yours",
    text: 'Each entry is a row of a plain Excel table; typed into the sheet it is judged by the same rules. And each calculation is a worksheet function: type =BATH.DOSE(121.175,"1+28") into a free cell. Under Functions stand all of them, each with a worked example.',
  },
  {
    view: "more",
    title: "More: the shop, what-if, and how far to trust it",
    text: "Under Shop stand your limits, tanks, waters and concentrates; under Try, figures that need no entry; under About, what was measured and what is left out. It is an aid to arithmetic: the label, the SDS and the permit win. This tour is here again whenever you want it.",
  },
];
