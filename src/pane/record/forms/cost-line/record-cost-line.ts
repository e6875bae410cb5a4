import { ReceiptAddRegular } from "@fluentui/react-icons/svg/receipt-add";
import { costLineEntry } from "./cost-line-entry.ts";
import { recordAction } from "../../record-entry.ts";

export const recordCostLine = recordAction(costLineEntry, ReceiptAddRegular, "log");
