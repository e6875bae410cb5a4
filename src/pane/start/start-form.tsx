import { Button, Field, Select } from "@fluentui/react-components";
import { ArrowLeftRegular } from "@fluentui/react-icons/svg/arrow-left";
import { Input } from "@fluentui/react-input";
import { useState } from "react";

import { fieldTextNow } from "../../advice/wording/moments.ts";
import { type UnitSystem, unitSystems } from "../../core/units/unit-system.ts";
import type { LogProblem } from "../../excel/office-problems.ts";
import type { LogContent } from "../../joblog/model/definition.ts";
import { focusField } from "../controls/entry-field.tsx";
import { FieldGroups } from "../controls/field-groups.tsx";
import { FindingsList } from "../controls/findings-list.tsx";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { ProblemCount } from "../controls/problem-count.tsx";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { Draft } from "../record/entry-form.ts";
import { fillStart } from "./start-entry.ts";
import { startLog } from "./start-log.ts";

const systemWords: Readonly<Record<UnitSystem, string>> = {
  US: "US: US gallons, inches, °F",
  metric: "Metric: liters, centimeters, °C",
  imperial: "Imperial: imperial gallons, inches, °C (thermometers there read °C)",
};

/** What was typed into the form, kept by whoever shows it. */
export interface StartDraft {
  readonly typed: Draft;
  readonly system: UnitSystem;
}

export const blankStart: StartDraft = { typed: {}, system: "US" };

interface Props {
  readonly draft: StartDraft;
  /** Why a log comes first, where something else follows. */
  readonly reason: string | undefined;
  readonly failure: LogProblem | undefined;
  readonly onChange: (draft: StartDraft) => void;
  readonly onBack: () => void;
  readonly onBuild: (system: UnitSystem, content: LogContent) => void;
}

/** The shop's first claim, tank, water and concentrate, which the new log starts with. */
export function StartForm({ draft, reason, failure, onChange, onBack, onBuild }: Props): React.JSX.Element {
  const page = usePageStyles();
  const { control } = useControlStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const [tried, setTried] = useState(false);
  const [today] = useState(() => fieldTextNow(new Date()).slice(0, 10));
  const { typed, system } = draft;
  const filled = fillStart(typed, system, today);
  const change = (key: string, value: string): void => {
    onChange({ system, typed: { ...typed, [key]: value } });
  };
  const typedProblems = filled.problems.filter(({ key }) => typed[key] !== undefined && typed[key].trim() !== "");
  const submit = (): void => {
    setTried(true);
    const first = filled.problems[0];
    if (first === undefined) onBuild(system, filled.content);
    else focusField(first.key);
  };
  const BuildIcon = startLog.icon;
  return (
    <form
      noValidate
      className={page.page}
      aria-label="Start a log here"
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <Button appearance="subtle" icon={<ArrowLeftRegular />} className={page.back} onClick={onBack}>
        Other ways to begin
      </Button>
      <div>
        <h2 ref={heading} tabIndex={-1} className={page.title}>
          Start a log here
        </h2>
        <p className={page.quiet}>
          {reason ?? "Bathsheet adds its own sheets to this workbook and leaves yours alone."}
        </p>
      </div>
      <Field label="Shop">
        <Input
          className={control}
          size="large"
          autoComplete="off"
          value={typed["shop"] ?? ""}
          onChange={(_, data) => {
            change("shop", data.value);
          }}
        />
      </Field>
      <Field label="Job number">
        <Input
          className={control}
          size="large"
          autoComplete="off"
          value={typed["jobNumber"] ?? ""}
          onChange={(_, data) => {
            change("jobNumber", data.value);
          }}
        />
      </Field>
      <Field label="Units" hint="Set once for this workbook. You can type any unit in a field, such as 53 C.">
        <Select
          className={control}
          size="large"
          value={system}
          onChange={(_, data) => {
            onChange({ typed, system: unitSystems.find((one) => one === data.value) ?? system });
          }}
        >
          {unitSystems.map((one) => (
            <option key={one} value={one}>
              {systemWords[one]}
            </option>
          ))}
        </Select>
      </Field>
      <FieldGroups
        groups={filled.groups}
        values={typed}
        system={system}
        converted={filled.converted}
        problems={tried ? filled.problems : typedProblems}
        showHelp
        onChange={change}
      />
      <FindingsList findings={filled.findings} />
      {failure === undefined ? null : <ProblemBar problem={failure} />}
      {tried ? <ProblemCount count={filled.problems.length} /> : null}
      <Button type="submit" appearance="primary" size="large" className={page.big} icon={<BuildIcon />}>
        {startLog.name}
      </Button>
    </form>
  );
}
