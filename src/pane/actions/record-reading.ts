import { EyedropperRegular } from "@fluentui/react-icons/svg/eyedropper";
import { readingEntry } from "../entries/reading-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordReading = recordAction(readingEntry, EyedropperRegular, "bath");
