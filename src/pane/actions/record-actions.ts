import { ArrowAutofitHeightRegular } from "@fluentui/react-icons/svg/arrow-autofit-height";
import { ArrowExitRegular } from "@fluentui/react-icons/svg/arrow-exit";
import { BeakerRegular } from "@fluentui/react-icons/svg/beaker";
import { BoxRegular } from "@fluentui/react-icons/svg/box";
import { BroomRegular } from "@fluentui/react-icons/svg/broom";
import { DishwasherRegular } from "@fluentui/react-icons/svg/dishwasher";
import { DocumentCheckmarkRegular } from "@fluentui/react-icons/svg/document-checkmark";
import { DropRegular } from "@fluentui/react-icons/svg/drop";
import { EditRegular } from "@fluentui/react-icons/svg/edit";
import { EyedropperRegular } from "@fluentui/react-icons/svg/eyedropper";
import { TargetRegular } from "@fluentui/react-icons/svg/target";
import { TopSpeedRegular } from "@fluentui/react-icons/svg/top-speed";
import { WaterRegular } from "@fluentui/react-icons/svg/water";
import { additionEntry } from "../entries/addition-entry.ts";
import { baselineEntry } from "../entries/baseline-entry.ts";
import { benchTestEntry } from "../entries/bench-test-entry.ts";
import { careEntry } from "../entries/care-entry.ts";
import { changeOutEntry } from "../entries/change-out-entry.ts";
import { chargeEntry } from "../entries/charge-entry.ts";
import { correctionEntry } from "../entries/correction-entry.ts";
import { itemEntry } from "../entries/item-entry.ts";
import { levelMakeUpEntry } from "../entries/level-make-up-entry.ts";
import { loadEntry } from "../entries/load-entry.ts";
import { meterCheckEntry } from "../entries/meter-check-entry.ts";
import { readingEntry } from "../entries/reading-entry.ts";
import { releaseEntry } from "../entries/release-entry.ts";
import type { EntryId } from "../entries/entry-form.ts";
import { recordAction, type RecordAction } from "./record-entry.ts";

/** In the order of a bath's life; then what puts an earlier entry right. */
export const recordActions: readonly RecordAction[] = [
  recordAction(itemEntry, BoxRegular, "log"),
  recordAction(meterCheckEntry, TopSpeedRegular, "log"),
  recordAction(chargeEntry, WaterRegular, "log"),
  recordAction(benchTestEntry, BeakerRegular, "bath"),
  recordAction(baselineEntry, TargetRegular, "bath"),
  recordAction(loadEntry, DishwasherRegular, "bath"),
  recordAction(readingEntry, EyedropperRegular, "bath"),
  recordAction(additionEntry, DropRegular, "bath"),
  recordAction(levelMakeUpEntry, ArrowAutofitHeightRegular, "bath"),
  recordAction(careEntry, BroomRegular, "bath"),
  recordAction(changeOutEntry, ArrowExitRegular, "bath"),
  recordAction(releaseEntry, DocumentCheckmarkRegular, "bath"),
  recordAction(correctionEntry, EditRegular, "log"),
];

export function recordActionOf(id: EntryId): RecordAction {
  const action = recordActions.find((one) => one.form.id === id);
  if (action === undefined) throw new RangeError(`No action records "${id}".`);
  return action;
}
