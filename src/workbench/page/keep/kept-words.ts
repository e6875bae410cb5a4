/** How it stands with what a person entered. */
export type KeptStatus =
  | { readonly kind: "nothing entered" }
  | { readonly kind: "kept"; readonly at: number }
  | { readonly kind: "refused"; readonly reason: string }
  | { readonly kind: "full"; readonly last: number | undefined }
  | { readonly kind: "open elsewhere" }
  | { readonly kind: "written elsewhere" }
  | { readonly kind: "unreadable"; readonly name: string; readonly reason: string };

export function isTrouble({ kind }: KeptStatus): boolean {
  return kind !== "nothing entered" && kind !== "kept";
}

function sameDay(a: Date, b: Date): boolean {
  return a.toDateString() === b.toDateString();
}

/** `08:25`, or `Mar 1, 08:25` of another day. */
export function timeWords(at: number, now: number): string {
  const [then, today] = [new Date(at), new Date(now)];
  const time = then.toLocaleTimeString("en-US", { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
  if (sameDay(then, today)) return time;
  const day = then.toLocaleDateString("en-US", { month: "short", day: "numeric" });
  return `${day}, ${time}`;
}

/** Where a log is kept, which a narrow head leaves unsaid. */
export const onThisDevice = " on this device";

/** The status in a sentence for the head of the page. */
export function keptWords(status: KeptStatus, now: number): string {
  switch (status.kind) {
    case "nothing entered":
      return `what you enter is kept${onThisDevice}`;
    case "kept":
      return `kept${onThisDevice}, ${timeWords(status.at, now)}`;
    case "refused":
      return "Not kept: this browser window lets pages keep nothing. Save a copy before you close it.";
    case "full":
      return status.last === undefined
        ? "Not kept: this device has no room left for it. Save a copy."
        : `Not kept since ${timeWords(status.last, now)}: this device has no room left for it. Save a copy.`;
    case "open elsewhere":
      return "This log is open in another tab. What you enter here is not kept.";
    case "written elsewhere":
      return "This log was changed or deleted in another tab. What you enter here is no longer kept.";
    case "unreadable":
      return `“${status.name}” could not be opened and was left as it is. ${status.reason}`;
  }
}
