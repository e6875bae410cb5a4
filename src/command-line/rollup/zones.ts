import * as z from "zod";

import { WrongUsage } from "../failure.ts";
import type { ZoneOf } from "./log-rows.ts";
import { isZone } from "./wall-time.ts";

const listSchema = z.record(z.string(), z.string());

function requireZone(zone: string): string {
  if (!isZone(zone)) throw new WrongUsage(`"${zone}" is no time zone of the IANA's list, such as America/Denver.`);
  return zone;
}

/** The one zone of all shops, or that of each by a JSON text `{ "Shop": "America/Denver" }`; a log itself holds none. */
export function zonesOf(zone: string | undefined, list: string | undefined): ZoneOf {
  const all = zone === undefined ? undefined : requireZone(zone);
  if (list === undefined) return () => all;
  let parsed: unknown;
  try {
    parsed = JSON.parse(list);
  } catch {
    parsed = undefined;
  }
  const reading = listSchema.safeParse(parsed);
  if (!reading.success) throw new WrongUsage('The list of zones is no JSON such as { "Shop": "America/Denver" }.');
  const zones = new Map(Object.entries(reading.data).map(([shop, of]) => [shop.toLowerCase(), requireZone(of)]));
  return (shop) => zones.get(shop.toLowerCase()) ?? all;
}
