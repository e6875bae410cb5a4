import { BoxCheckmarkRegular } from "@fluentui/react-icons/svg/box-checkmark";

import { recordAction } from "../../record-entry.ts";
import { stockMoveEntry } from "./stock-move-entry.ts";

export const recordStockMove = recordAction(stockMoveEntry, BoxCheckmarkRegular, "log");
