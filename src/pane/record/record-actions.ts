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

import type { EntryId } from "./entry-form.ts";
import { additionEntry } from "./forms/addition/addition-entry.ts";
import { baselineEntry } from "./forms/baseline/baseline-entry.ts";
import { benchTestEntry } from "./forms/bench-test/bench-test-entry.ts";
import { careEntry } from "./forms/care/care-entry.ts";
import { changeOutEntry } from "./forms/change-out/change-out-entry.ts";
import { chargeEntry } from "./forms/charge/charge-entry.ts";
import { correctionEntry } from "./forms/correction/correction-entry.ts";
import { itemEntry } from "./forms/item/item-entry.ts";
import { levelMakeUpEntry } from "./forms/level-make-up/level-make-up-entry.ts";
import { loadEntry } from "./forms/load/load-entry.ts";
import { meterCheckEntry } from "./forms/meter-check/meter-check-entry.ts";
import { readingEntry } from "./forms/reading/reading-entry.ts";
import { releaseEntry } from "./forms/release/release-entry.ts";
import { type RecordAction, recordAction } from "./record-entry.ts";

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
