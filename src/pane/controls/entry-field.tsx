import { Field, mergeClasses, Select } from "@fluentui/react-components";
import { Input } from "@fluentui/react-input";
import { Textarea } from "@fluentui/react-textarea";

import type { UnitSystem } from "../../core/units/unit-system.ts";
import { temperature } from "../../joblog/model/units-of.ts";
import type { EntryField } from "../record/entry-form.ts";
import { fieldName } from "./read-input.ts";
import { columnUnit } from "./unit-kinds.ts";
import { useControlStyles } from "./use-control-styles.ts";

interface Props {
  readonly field: EntryField;
  readonly system: UnitSystem;
  readonly value: string;
  readonly problem: string | undefined;
  /** What a typed unit was turned into. */
  readonly converted: string | undefined;
  readonly showHelp: boolean;
  /** Takes the whole width of the form. */
  readonly wide: boolean;
  readonly onChange: (value: string) => void;
  readonly onLeave: () => void;
}

/** The id of a field's element, by which `focusField` finds it. */
export function fieldElementId(key: string): string {
  return `field-${key.replaceAll(/[^a-z0-9]+/gi, "-")}`;
}

const listIdOf = (field: EntryField): string => `${fieldElementId(field.key)}-suggestions`;

/** Moves the focus to a field, unfolding what it is folded into. */
export function focusField(key: string): void {
  const element = document.getElementById(fieldElementId(key));
  element?.closest("details")?.setAttribute("open", "");
  element?.querySelector<HTMLElement>("input, select, textarea")?.focus();
}

function controlOf({ field, system, value, onChange }: Props, className: string): React.JSX.Element {
  const { column } = field;
  if (field.choices !== undefined) {
    return (
      <Select
        className={className}
        size="large"
        value={value}
        onChange={(_, data) => {
          onChange(data.value);
        }}
      >
        <option value=""></option>
        {field.choices.map((choice) => (
          <option key={choice} value={choice}>
            {choice}
          </option>
        ))}
      </Select>
    );
  }
  if (column.type === "date" || column.type === "date and time") {
    const type = column.type === "date" ? "date" : "datetime-local";
    return (
      <Input
        className={className}
        size="large"
        type={type}
        value={value}
        onChange={(_, data) => {
          onChange(data.value);
        }}
      />
    );
  }
  if (column.id === "note" && field.label === undefined) {
    return (
      <Textarea
        className={className}
        size="large"
        resize="vertical"
        value={value}
        onChange={(_, data) => {
          onChange(data.value);
        }}
      />
    );
  }
  const unit = columnUnit(column.unit, system);
  // A temperature is read off an instrument in the shop's own unit; an amount may come in the unit of a jug, in letters.
  const bareNumber = column.type !== "text" && (unit === undefined || column.unit === temperature);
  return (
    <Input
      className={className}
      size="large"
      autoComplete="off"
      inputMode={bareNumber ? "decimal" : "text"}
      {...(field.suggestions === undefined ? {} : { list: listIdOf(field) })}
      value={value}
      onChange={(_, data) => {
        onChange(data.value);
      }}
    />
  );
}

/** One field of a form, named like the log's column. */
export function EntryFieldView(props: Props): React.JSX.Element {
  const { field, system, problem, converted, showHelp, wide } = props;
  const label = fieldName({ ...field.column, label: field.label ?? field.column.label }, system);
  const { help } = field.column;
  const hint =
    converted === undefined ? (showHelp && problem?.includes(help) !== true ? help : undefined) : `= ${converted}`;
  const { control, cell, wideCell } = useControlStyles();
  return (
    <>
      <Field
        className={mergeClasses(cell, wide && wideCell)}
        id={fieldElementId(field.key)}
        label={label}
        required={field.required}
        onBlur={props.onLeave}
        {...(problem === undefined ? {} : { validationMessage: problem })}
        {...(hint === undefined ? {} : { hint })}
      >
        {controlOf(props, control)}
      </Field>
      {field.suggestions === undefined ? null : (
        <datalist id={listIdOf(field)}>
          {field.suggestions.map((text) => (
            <option key={text} value={text} />
          ))}
        </datalist>
      )}
    </>
  );
}
