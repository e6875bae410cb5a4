import { Button, Field, Input, Select, Spinner } from "@fluentui/react-components";
import { useState } from "react";
import { unitSystems, type UnitSystem } from "../../core/units/unit-system.ts";
import { problemFrom, type LogProblem } from "../../excel/office-problems.ts";
import { lookAtDemo } from "../actions/look-at-demo.ts";
import { startLog } from "../actions/start-log.ts";
import type { Draft } from "../entries/entry-form.ts";
import { fillStart } from "../entries/start-entry.ts";
import { fieldTextNow } from "../fields/moments.ts";
import { focusField, useControlStyles } from "./entry-field.tsx";
import { FieldGroups } from "./field-groups.tsx";
import { FindingsList } from "./findings-list.tsx";
import { ProblemBar } from "./problem-bar.tsx";
import { usePageStyles } from "./use-page-styles.ts";

const systemWords: Readonly<Record<UnitSystem, string>> = {
  US: "US: US gallons, inches, °F",
  metric: "Metric: liters, centimeters, °C",
  imperial: "Imperial: imperial gallons, inches, °C",
};

/** First run: the workbook holds no log yet. */
export function StartView({ onBuilt }: { readonly onBuilt: () => Promise<void> }): React.JSX.Element {
  const page = usePageStyles();
  const { control } = useControlStyles();
  const [typed, setTyped] = useState<Draft>({});
  const [system, setSystem] = useState<UnitSystem>("US");
  const [tried, setTried] = useState(false);
  const [busy, setBusy] = useState<string>();
  const [failure, setFailure] = useState<LogProblem>();
  const [today] = useState(() => fieldTextNow(new Date()).slice(0, 10));
  const filled = fillStart(typed, system, today);
  const change = (key: string, value: string): void => { setTyped((before) => ({ ...before, [key]: value })); };
  const typedProblems = filled.problems.filter(({ key }) => typed[key] !== undefined && typed[key].trim() !== "");

  const attempt = async (doing: string, work: () => Promise<unknown>): Promise<void> => {
    setBusy(doing);
    setFailure(undefined);
    try {
      await work();
      await onBuilt();
    } catch (error) {
      setFailure(problemFrom(error));
    } finally {
      setBusy(undefined);
    }
  };

  const build = (): void => {
    setTried(true);
    const first = filled.problems[0];
    if (first === undefined) void attempt("Building the log…", () => startLog.run({ system, content: filled.content }));
    else focusField(first.key);
  };

  const [DemoIcon, BuildIcon] = [lookAtDemo.icon, startLog.icon];
  return (
    <div className={page.page}>
      <div>
        <h2 className={page.title}>Start a log here</h2>
        <p className={page.quiet}>Bathsheet adds its own sheets to this workbook and leaves yours alone. Nothing leaves this computer.</p>
      </div>
      <Button
        size="large"
        icon={<DemoIcon />}
        className={page.big}
        disabled={busy !== undefined}
        onClick={() => void attempt("Building the demo days…", () => lookAtDemo.run(undefined))}
      >
        {lookAtDemo.name}
      </Button>
      <form
        noValidate
        className={page.page}
        aria-label="Start a log here"
        onSubmit={(event) => {
          event.preventDefault();
          if (busy === undefined) build();
        }}
      >
        <Field label="Shop">
          <Input className={control} size="large" autoComplete="off" value={typed["shop"] ?? ""} onChange={(_, data) => { change("shop", data.value); }} />
        </Field>
        <Field label="Job number">
          <Input className={control} size="large" autoComplete="off" value={typed["jobNumber"] ?? ""} onChange={(_, data) => { change("jobNumber", data.value); }} />
        </Field>
        <Field label="Units" hint="Set once for this workbook. You can type any unit in a field, such as 53 C.">
          <Select className={control} size="large" value={system} onChange={(_, data) => { setSystem(unitSystems.find((one) => one === data.value) ?? system); }}>
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
        {tried && filled.problems.length > 0 ? (
          <p role="alert" className={page.quiet}>{`${String(filled.problems.length)} to put right above.`}</p>
        ) : null}
        <Button type="submit" appearance="primary" size="large" className={page.big} icon={busy === undefined ? <BuildIcon /> : <Spinner size="tiny" />}>
          {busy ?? startLog.name}
        </Button>
      </form>
      <p role="status" className={page.quiet}>{busy ?? ""}</p>
    </div>
  );
}
