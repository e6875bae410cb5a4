import type { SignalLook } from "../model/definition.ts";
import type { Look, StyleId } from "../model/plan.ts";

const ink = "#1F2D33";
const quietInk = "#5F6B71";
const white = "#FFFFFF";
const deepTeal = "#1F4E57";
const paleTeal = "#E3EDEE";
const inputFill = "#FFFBEA";
const inputEdge = "#C8B887";
const computedEdge = "#D3DCDE";

/** The font of every cell: Excel has it everywhere, other programs have one of the same widths. */
export const fontName = "Arial";

export const fontSize = 10;

/** What each kind of cell looks like. A cell to type in is warm and framed, a computed one is plain. */
export const styleLooks: Readonly<Record<StyleId, Look>> = {
  title: { color: deepTeal, bold: true, size: 15 },
  purpose: { color: quietInk },
  caution: { color: "#7A3B00", bold: true },
  caption: { color: deepTeal, bold: true, size: 11 },
  fieldLabel: { color: ink },
  fieldInput: { fill: inputFill, color: ink, border: inputEdge },
  fieldComputed: { color: ink, border: computedEdge },
  fieldStated: { color: ink, bold: true },
  fieldHelp: { color: quietInk, italic: true },
  headerInput: { fill: deepTeal, color: white, bold: true, wrap: true, border: deepTeal },
  headerComputed: { fill: paleTeal, color: deepTeal, bold: true, wrap: true, border: computedEdge },
  headerHelper: { color: quietInk, italic: true, wrap: true },
  input: { fill: inputFill, color: ink, wrap: true, border: inputEdge },
  computed: { color: ink, wrap: true, border: computedEdge },
  // A document has lines to spare: without a frame the ones that hold nothing are blank paper.
  paperLine: { color: ink, wrap: true },
  helper: { color: quietInk },
};

/** Colours that repeat what a cell's words already say. */
export const signalLooks: Readonly<Record<SignalLook, Look>> = {
  act: { fill: "#FADFDA", color: "#8A1F11", bold: true },
  watch: { fill: "#FFEFC7", color: "#6B4500", bold: true },
  good: { fill: "#E0F0E4", color: "#1D5632" },
  quiet: { color: "#6A767C" },
  unseen: { color: white },
};
