import { ArrowExitRegular } from "@fluentui/react-icons/svg/arrow-exit";
import { changeOutEntry } from "../entries/change-out-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordChangeOut = recordAction(changeOutEntry, ArrowExitRegular, "bath");
