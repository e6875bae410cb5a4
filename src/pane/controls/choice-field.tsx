import { Field, Select } from "@fluentui/react-components";

import { useControlStyles } from "./use-control-styles.ts";

interface Props {
  readonly label: string;
  readonly choices: readonly string[];
  readonly value: string;
  readonly onChange: (choice: string) => void;
}

/** One of a few words. */
export function ChoiceField({ label, choices, value, onChange }: Props): React.JSX.Element {
  const { control } = useControlStyles();
  return (
    <Field label={label}>
      <Select
        className={control}
        size="large"
        value={value}
        onChange={(_, data) => {
          onChange(data.value);
        }}
      >
        {choices.map((choice) => (
          <option key={choice}>{choice}</option>
        ))}
      </Select>
    </Field>
  );
}
