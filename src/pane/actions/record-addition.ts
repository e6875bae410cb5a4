import { DropRegular } from "@fluentui/react-icons/svg/drop";
import { additionEntry } from "../entries/addition-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordAddition = recordAction(additionEntry, DropRegular, "bath");
