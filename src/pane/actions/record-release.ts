import { DocumentCheckmarkRegular } from "@fluentui/react-icons/svg/document-checkmark";
import { releaseEntry } from "../entries/release-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordRelease = recordAction(releaseEntry, DocumentCheckmarkRegular, "bath");
