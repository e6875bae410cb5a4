import { BoxRegular } from "@fluentui/react-icons/svg/box";
import { itemEntry } from "../entries/item-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordItem = recordAction(itemEntry, BoxRegular, "log");
