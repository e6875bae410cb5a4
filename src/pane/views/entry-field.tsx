import { Field, Input, Select, Textarea } from "@fluentui/react-components";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { fieldName } from "../fields/read-input.ts";
import { columnUnit } from "../fields/unit-kinds.ts";
import type { EntryField } from "../entries/entry-form.ts";

interface Props {
  readonly field: EntryField;
  readonly system: UnitSystem;
  readonly value: string;
  readonly problem: string | undefined;
  /** What a typed unit was turned into. */
  readonly converted: string | undefined;
  readonly showHelp: boolean;
  readonly onChange: (value: string) => void;
}

/** The id by which a form finds a field to move the focus to. */
export function fieldElementId(key: string): string {
  return `field-${key.replaceAll(/[^a-z0-9]+/gi, "-")}`;
}

function control({ field, system, value, onChange }: Props): React.JSX.Element {
  const id = fieldElementId(field.key);
  const { column } = field;
  if (field.choices !== undefined) {
    return (
      <Select id={id} size="large" value={value} onChange={(_, data) => { onChange(data.value); }}>
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
    return <Input id={id} size="large" type={type} value={value} onChange={(_, data) => { onChange(data.value); }} />;
  }
  if (column.id === "note") {
    return <Textarea id={id} size="large" resize="vertical" value={value} onChange={(_, data) => { onChange(data.value); }} />;
  }
  const bareNumber = column.type !== "text" && columnUnit(column.unit, system) === undefined;
  return (
    <Input id={id} size="large" autoComplete="off" inputMode={bareNumber ? "decimal" : "text"} value={value} onChange={(_, data) => { onChange(data.value); }} />
  );
}

/** One field of a form, named like the log's column. */
export function EntryFieldView(props: Props): React.JSX.Element {
  const { field, system, problem, converted, showHelp } = props;
  const label = fieldName({ ...field.column, label: field.label ?? field.column.label }, system);
  const hint = converted === undefined ? (showHelp ? field.column.help : undefined) : `= ${converted}`;
  return (
    <Field
      label={label}
      required={field.required}
      {...(problem === undefined ? {} : { validationMessage: problem })}
      {...(hint === undefined ? {} : { hint })}
    >
      {control(props)}
    </Field>
  );
}
