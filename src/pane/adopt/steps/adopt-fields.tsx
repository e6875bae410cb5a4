import { Field, Select } from "@fluentui/react-components";
import { Input } from "@fluentui/react-input";

import { useControlStyles } from "../../controls/use-control-styles.ts";

interface Option {
  readonly value: string;
  readonly words: string;
}

interface PickProps {
  readonly label: string;
  readonly value: string;
  /** The first option, for no answer. */
  readonly none: string;
  readonly options: readonly Option[];
  readonly hint?: string;
  readonly required?: boolean;
  readonly onPick: (value: string) => void;
}

/** One question with its answers. */
export function Pick({ label, value, none, options, hint, required = false, onPick }: PickProps): React.JSX.Element {
  const { control } = useControlStyles();
  return (
    <Field label={label} required={required} {...(hint === undefined ? {} : { hint })}>
      <Select
        className={control}
        size="large"
        value={value}
        onChange={(_, data) => {
          onPick(data.value);
        }}
      >
        <option value="">{none}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.words}
          </option>
        ))}
      </Select>
    </Field>
  );
}

export const asOptions = (words: readonly string[]): readonly Option[] =>
  words.map((value) => ({ value, words: value }));

export function TextAnswer({
  label,
  value,
  hint,
  onType,
}: {
  readonly label: string;
  readonly value: string;
  readonly hint: string;
  readonly onType: (value: string) => void;
}): React.JSX.Element {
  const { control } = useControlStyles();
  return (
    <Field label={label} hint={hint}>
      <Input
        className={control}
        size="large"
        autoComplete="off"
        value={value}
        onChange={(_, data) => {
          onType(data.value);
        }}
      />
    </Field>
  );
}
