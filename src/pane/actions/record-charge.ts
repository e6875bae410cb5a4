import { WaterRegular } from "@fluentui/react-icons/svg/water";
import { chargeEntry } from "../entries/charge-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordCharge = recordAction(chargeEntry, WaterRegular, "log");
