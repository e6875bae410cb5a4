/** What a form of the pane is: fields as data, and what they mean as a pure function of what was typed. */
import type { FluentIcon } from "@fluentui/react-icons";

import type { FieldProblem, FilledFields } from "../../advice/filled-fields.ts";
import type { Finding } from "../../advice/finding.ts";
import type { LogContext } from "../../advice/log-context.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import type { NewRow } from "../../joblog/model/definition.ts";
import type { InputColumn } from "../../joblog/model/definition.ts";
import type { Need } from "./action.ts";
import type { StepForm } from "./step-forms.ts";

/** Typed text by field key; an absent key has not been touched. */
export type Draft = Readonly<Partial<Record<string, string>>>;

export interface EntryField {
  readonly key: string;
  /** Column of the log that the value goes to: label, unit, limits and help come from it. */
  readonly column: InputColumn;
  readonly required: boolean;
  /** Words that replace the column's label where the form has several fields of one column. */
  readonly label?: string;
  readonly choices?: readonly string[];
  /** Offered while typing; anything else may be typed too. */
  readonly suggestions?: readonly string[];
  /** Asks for the initials of whoever does it. */
  readonly isWho?: true;
  /** The time may lie ahead, or outside the life of the entry's bath. */
  readonly anyTime?: boolean;
  /** The time belongs to what comes after the bath was closed. */
  readonly afterClose?: boolean;
}

export interface FieldGroup {
  readonly legend?: string;
  /** Folded away until asked for; nothing in it is required. */
  readonly folded?: boolean;
  readonly fields: readonly EntryField[];
}

/** What a draft means: findings for the person, and what it writes to the log. */
export interface Meaning extends Pick<LogEdit, "fills" | "changes"> {
  readonly findings: readonly Finding[];
  /** What is wrong beyond single fields. */
  readonly problems: readonly FieldProblem[];
  /** What is possible but unlikely: each is a sentence that the person is asked about once before it is recorded. */
  readonly doubts?: readonly string[];
  /** Empty as long as there are problems or fields that cannot be read. */
  readonly rows: readonly NewRow[];
  /** What will have been recorded, for the confirmation. */
  readonly recorded: string;
  /** The form must not be used yet; another comes first. */
  readonly blocked?: { readonly why: string; readonly first: StepForm };
}

/** Everything about one kind of entry; `forms.ts` lists them. */
export interface EntryForm<Id extends string = string> {
  readonly id: Id;
  /** Over the form, in the list of entries and on every button that leads there. */
  readonly title: string;
  readonly icon: FluentIcon;
  readonly needs: Need;
  /** The view that opens it; if left out, the Record view lists it. */
  readonly from?: "claims" | "shop" | "now";
  /** One is likely to follow another. */
  readonly series?: true;
  readonly purpose: string;
  readonly submit: string;
  /** What this form minds besides the cautions of its step, which stand in `src/core/safety`. */
  readonly caution?: string;
  readonly groups: (values: Draft, context: LogContext) => readonly FieldGroup[];
  /** What untouched fields start with; follows what was typed elsewhere in the form. */
  readonly proposals: (typed: Draft, context: LogContext) => Draft;
  readonly meaning: (filled: FilledFields<string>, context: LogContext, values: Draft) => Meaning;
  /** Where a form has repeated fields: how many sets there are, kept in the draft under this key. */
  readonly repeats?: { readonly key: string; readonly label: string; readonly least: number; readonly most: number };
}
