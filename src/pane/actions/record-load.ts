import { DishwasherRegular } from "@fluentui/react-icons/svg/dishwasher";
import { loadEntry } from "../entries/load-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordLoad = recordAction(loadEntry, DishwasherRegular, "bath");
