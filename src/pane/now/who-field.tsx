import { Field, Select } from "@fluentui/react-components";

import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { useControlStyles } from "../controls/use-control-styles.ts";

interface Props {
  readonly log: LogSnapshot;
  readonly me: string | undefined;
  readonly onMe: (initials: string | undefined) => void;
}

/** Who works on this device, chosen once: their initials stand in each new row. Nothing where the shop has listed nobody. */
export function WhoField({ log, me, onMe }: Props): React.JSX.Element | null {
  const { control } = useControlStyles();
  const people = log.rows.people.flatMap(({ cells: { initials, name } }) =>
    initials === undefined ? [] : [{ initials: String(initials), name: name === undefined ? "" : `, ${String(name)}` }],
  );
  if (people.length === 0) return null;
  return (
    <Field label="I am">
      <Select
        className={control}
        size="large"
        value={me ?? ""}
        onChange={(_, { value }) => {
          onMe(value === "" ? undefined : value);
        }}
      >
        <option value="">not said</option>
        {people.map(({ initials, name }) => (
          <option key={initials} value={initials}>
            {initials}
            {name}
          </option>
        ))}
        {me === undefined || people.some(({ initials }) => initials === me) ? null : <option value={me}>{me}</option>}
      </Select>
    </Field>
  );
}
