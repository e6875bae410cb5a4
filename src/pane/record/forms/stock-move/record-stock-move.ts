import { BoxCheckmarkRegular } from "@fluentui/react-icons/svg/box-checkmark";
import { stockMoveEntry } from "./stock-move-entry.ts";
import { recordAction } from "../../record-entry.ts";

export const recordStockMove = recordAction(stockMoveEntry, BoxCheckmarkRegular, "log");
