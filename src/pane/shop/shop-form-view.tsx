import { Button } from "@fluentui/react-components";
import { ArrowLeftRegular } from "@fluentui/react-icons/svg/arrow-left";
import { useState } from "react";

import type { UnitSystem } from "../../core/units/unit-system.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { focusField } from "../controls/entry-field.tsx";
import { FieldGroups } from "../controls/field-groups.tsx";
import { FindingsList } from "../controls/findings-list.tsx";
import { onEscape } from "../controls/on-escape.ts";
import { ProblemCount } from "../controls/problem-count.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { findingsOr, useWorkedOut } from "../controls/use-worked-out.ts";
import type { Draft } from "../record/entry-form.ts";
import { saveShop } from "./save-shop.ts";
import type { ShopForm } from "./shop-form.ts";

interface Props {
  readonly form: ShopForm;
  readonly system: UnitSystem;
  readonly onBack: () => void;
  readonly onSaved: (what: string) => Promise<void>;
}

/** One form of the shop's figures; what is saved is only what differs from the log. */
export function ShopFormView({ form, system, onBack, onSaved }: Props): React.JSX.Element {
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const [typed, setTyped] = useState<Draft>({});
  const [tried, setTried] = useState(false);
  const attempt = useAttempt();
  const { answer, waiting } = useWorkedOut(() => form.fill(typed));
  const { values, converted, problems, findings, changes } = answer;
  const typedProblems = problems.filter(({ key }) => typed[key] !== undefined && typed[key].trim() !== "");
  const Icon = saveShop.icon;
  const save = (): void => {
    setTried(true);
    const [first] = problems;
    if (first !== undefined) focusField(first.key);
    else {
      void attempt.start(async () => {
        if (changes === undefined) return "Nothing differs from the log.";
        await saveShop.run(changes);
        await onSaved(form.saved(values));
        return "";
      });
    }
  };
  return (
    <form
      noValidate
      className={page.page}
      aria-label={form.title}
      onKeyDown={onEscape(Object.keys(typed).length > 0, onBack)}
      onSubmit={(event) => {
        event.preventDefault();
        if (!attempt.busy) save();
      }}
    >
      <Button appearance="subtle" icon={<ArrowLeftRegular />} className={page.back} onClick={onBack}>
        Shop
      </Button>
      <div>
        <h2 ref={heading} tabIndex={-1} className={page.title}>
          {form.title}
        </h2>
        <p className={page.quiet}>{form.purpose}</p>
      </div>
      <FieldGroups
        groups={form.groups}
        values={values}
        system={system}
        converted={converted}
        problems={tried ? problems : typedProblems}
        showHelp
        onChange={(key, value) => {
          setTyped((before) => ({ ...before, [key]: value }));
        }}
      />
      <FindingsList findings={findingsOr(waiting, findings)} />
      {tried ? <ProblemCount count={problems.length} /> : null}
      <Button type="submit" appearance="primary" size="large" icon={<Icon />} className={page.big}>
        {attempt.busy ? "Writing…" : saveShop.name}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </form>
  );
}
