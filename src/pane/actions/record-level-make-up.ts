import { ArrowAutofitHeightRegular } from "@fluentui/react-icons/svg/arrow-autofit-height";
import { levelMakeUpEntry } from "../entries/level-make-up-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordLevelMakeUp = recordAction(levelMakeUpEntry, ArrowAutofitHeightRegular, "bath");
