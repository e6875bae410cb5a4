import { BeakerRegular } from "@fluentui/react-icons/svg/beaker";
import { benchTestEntry } from "../entries/bench-test-entry.ts";
import { recordAction } from "./record-entry.ts";

export const recordBenchTest = recordAction(benchTestEntry, BeakerRegular, "bath");
