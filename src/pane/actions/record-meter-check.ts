import { TopSpeedRegular } from "@fluentui/react-icons/svg/top-speed";
import { meterCheckEntry } from "../entries/meter-check-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordMeterCheck = recordAction(meterCheckEntry, TopSpeedRegular, "log");
