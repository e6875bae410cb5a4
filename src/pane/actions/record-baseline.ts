import { TargetRegular } from "@fluentui/react-icons/svg/target";
import { baselineEntry } from "../entries/baseline-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordBaseline = recordAction(baselineEntry, TargetRegular, "bath");
