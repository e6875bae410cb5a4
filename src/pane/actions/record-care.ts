import { BroomRegular } from "@fluentui/react-icons/svg/broom";
import { careEntry } from "../entries/care-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordCare = recordAction(careEntry, BroomRegular, "bath");
