import { makeStyles, tokens } from "@fluentui/react-components";

import type { FieldProblem } from "../../advice/filled-fields.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Draft, EntryField, FieldGroup } from "../record/entry-form.ts";
import { EntryFieldView } from "./entry-field.tsx";

const useStyles = makeStyles({
  group: { border: "none", margin: 0, padding: 0, minWidth: 0 },
  legend: {
    padding: 0,
    marginBottom: tokens.spacingVerticalS,
    fontWeight: tokens.fontWeightSemibold,
    color: tokens.colorNeutralForeground2,
  },
  fold: {
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    "& > summary": {
      cursor: "pointer",
      padding: `${tokens.spacingVerticalM} 0`,
      fontWeight: tokens.fontWeightSemibold,
      color: tokens.colorBrandForegroundLink,
    },
  },
  grid: {
    display: "grid",
    gridTemplateColumns: "repeat(2, minmax(0, 1fr))",
    columnGap: tokens.spacingHorizontalM,
    marginBottom: `calc(-1 * ${tokens.spacingVerticalM})`,
  },
});

interface Props {
  readonly groups: readonly FieldGroup[];
  readonly values: Draft;
  readonly system: UnitSystem;
  readonly converted: Readonly<Partial<Record<string, string>>>;
  /** Only those that are to be shown now. */
  readonly problems: readonly FieldProblem[];
  readonly showHelp?: boolean;
  readonly onChange: (key: string, value: string) => void;
  /** The caret has left a field. */
  readonly onLeave?: (key: string) => void;
}

/** Characters that a field of half the pane's width still shows; a list needs room for its arrow. */
const halfWidth = 12;
const halfList = 8;

/** Whatever needs room takes the whole width; a problem changes no width, or fields would jump in mid-number. */
function needsRoom({ column, label, choices }: EntryField, showHelp: boolean): boolean {
  const unit = column.unit === undefined ? 0 : column.unit.US.length + 2;
  const longName = (label ?? column.label).length + unit > 20;
  const moment = column.type === "date and time" || column.type === "date";
  if (showHelp || longName || moment) return true;
  if (choices !== undefined) return choices.some((choice) => choice.length > halfList);
  return column.type === "text" && column.width > halfWidth;
}

/** Short fields stand two in a row; one that finds no neighbor takes the whole width too. */
function wideFields(fields: readonly EntryField[], wants: (field: EntryField) => boolean): ReadonlySet<string> {
  const wide = new Set<string>();
  let waiting: string | undefined;
  for (const field of fields) {
    if (!wants(field)) waiting = waiting === undefined ? field.key : undefined;
    else {
      wide.add(field.key);
      if (waiting !== undefined) wide.add(waiting);
      waiting = undefined;
    }
  }
  if (waiting !== undefined) wide.add(waiting);
  return wide;
}

export function FieldGroups({
  groups,
  values,
  system,
  converted,
  problems,
  showHelp = false,
  onChange,
  onLeave,
}: Props): React.JSX.Element {
  const styles = useStyles();
  const problemOf = (field: EntryField): string | undefined => problems.find((one) => one.key === field.key)?.message;
  const grid = (group: FieldGroup): React.JSX.Element => {
    const wide = wideFields(group.fields, (field) => needsRoom(field, showHelp));
    return (
      <div className={styles.grid}>
        {group.fields.map((field) => (
          <EntryFieldView
            key={field.key}
            field={field}
            system={system}
            value={values[field.key] ?? ""}
            problem={problemOf(field)}
            converted={converted[field.key]}
            showHelp={showHelp}
            wide={wide.has(field.key)}
            onChange={(value) => {
              onChange(field.key, value);
            }}
            onLeave={() => {
              onLeave?.(field.key);
            }}
          />
        ))}
      </div>
    );
  };
  return (
    <>
      {groups.map((group, index) => {
        const key = group.legend ?? String(index);
        if (group.folded === true) {
          return (
            <details key={key} className={styles.fold}>
              <summary>{group.legend}</summary>
              {grid(group)}
            </details>
          );
        }
        return (
          <fieldset key={key} className={styles.group}>
            {group.legend === undefined ? null : <legend className={styles.legend}>{group.legend}</legend>}
            {grid(group)}
          </fieldset>
        );
      })}
    </>
  );
}
