/** Whether an addition finds room, as its row on the Additions sheet will say it. */
import { depth as depthUnit, volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { tankRoom } from "../../joblog/model/words.ts";
import type { RowFacts } from "../bath-facts.ts";
import type { Finding } from "../finding.ts";
import type { LogContext } from "../log-context.ts";
import { amount, figure } from "../wording/figures.ts";
import { tankOf, whereHeight } from "./tank-limits.ts";

interface Excess {
  readonly text: string;
  readonly room: (typeof tankRoom)[keyof typeof tankRoom];
  /** Up to the rim, where it is known. */
  readonly rim: number | undefined;
}

function excessOf(addition: RowFacts<"additions">, context: LogContext): Excess | undefined {
  const tank = tankOf(context, addition.text("bath"));
  const [after, room] = [addition.number("volumeAfter"), addition.text("room")];
  const [atLine, perDepth, line] = (["workingVolume", "volumePerDepth", "fillDepth"] as const).map((id) =>
    tank?.number(id),
  );
  if (after === undefined || room === undefined || room === tankRoom.fits) return undefined;
  if (atLine === undefined || perDepth === undefined || line === undefined) return undefined;
  const [unit, high] = [volumeUnit[context.system], depthUnit[context.system]];
  const over = after - atLine;
  return {
    text: `By the log the tank then holds ${amount(after)} ${unit}, ${amount(over)} ${unit} over its fill line, which is ${figure(over / perDepth, 1)} ${high} higher`,
    room,
    rim: tank?.number("height"),
  };
}

/** Asked where it runs over the rim, or over the fill line of a tank whose rim nobody measured. */
export function roomDoubts(addition: RowFacts<"additions">, context: LogContext): readonly string[] {
  const excess = excessOf(addition, context);
  if (excess === undefined) return [];
  if (excess.room === tankRoom.overRim)
    return [
      `${excess.text}, and above the rim at ${figure(excess.rim ?? 0, 1)} ${depthUnit[context.system]}. Did it fit?`,
    ];
  return excess.rim === undefined ? [`${excess.text}. Is there room? ${whereHeight}`] : [];
}

export function roomFindings(addition: RowFacts<"additions">, context: LogContext): readonly Finding[] {
  const excess = excessOf(addition, context);
  if (excess === undefined) return [];
  const rim =
    excess.rim === undefined
      ? `. ${whereHeight}`
      : `; the rim is at ${figure(excess.rim, 1)} ${depthUnit[context.system]}`;
  return [
    {
      tone: excess.room === tankRoom.overRim ? "act" : "watch",
      text: excess.rim === undefined ? `${excess.text}${rim}` : `${excess.text}${rim}.`,
    },
  ];
}
