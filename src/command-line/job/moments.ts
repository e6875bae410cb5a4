import { fieldTextOf, serialOf } from "../../advice/wording/moments.ts";
import type { ContentType } from "../../joblog/model/definition.ts";

export const isMoment = (type: ContentType): boolean => type === "date" || type === "date and time";

/** Serial number of a date or a date and time as a job writes it; undefined for any other text. */
export const serialIn = (text: string): number | undefined => serialOf(text);

/** The serial number as text where the text says exactly the same, or else the number itself: nothing of it may be lost. */
export function momentText(serial: number): string | number {
  if (!(serial >= 0) || serial > lastSerial) return serial;
  const minute = fieldTextOf(serial);
  const day = minute.slice(0, "2027-03-01".length);
  return [day, minute].find((text) => serialOf(text) === serial) ?? serial;
}

/** 31 December 9999, Excel's last day. */
const lastSerial = 2_958_465;
