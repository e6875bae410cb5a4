import { ReceiptAddRegular } from "@fluentui/react-icons/svg/receipt-add";

import { recordAction } from "../../record-entry.ts";
import { costLineEntry } from "./cost-line-entry.ts";

export const recordCostLine = recordAction(costLineEntry, ReceiptAddRegular, "log");
