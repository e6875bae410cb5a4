import { EditRegular } from "@fluentui/react-icons/svg/edit";
import { correctionEntry } from "../entries/correction-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordCorrection = recordAction(correctionEntry, EditRegular, "log");
