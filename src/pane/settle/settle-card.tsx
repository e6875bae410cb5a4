import { Button, Field } from "@fluentui/react-components";
import { Input } from "@fluentui/react-input";
import { useState } from "react";

import { rowFacts } from "../../advice/bath-facts.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { isSettledIn } from "../../advice/settled-baths.ts";
import { momentWords } from "../../advice/wording/moments.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { ChoiceField } from "../controls/choice-field.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { putFormulasBack, settleBath } from "./settle-bath.ts";

interface Props {
  readonly context: LogContext;
  readonly refresh: () => Promise<void>;
}

/** "settled Mar 8, 2027, 09:00 by TF" */
function settledWords({ number, text }: ReturnType<typeof rowFacts<"baths">>): string {
  const [at, by] = [number("settledAt"), text("settledBy")];
  return ["settled", ...(at === undefined ? [] : [momentWords(at)]), ...(by === undefined ? [] : [`by ${by}`])].join(
    " ",
  );
}

/** Lets the rows of a closed bath hold values instead of formulas, so that Excel works less, or follow their formulas again. */
export function SettleCard({ context, refresh }: Props): React.JSX.Element {
  const page = usePageStyles();
  const { control } = useControlStyles();
  const { log, now, me } = context;
  const [chosen, setChosen] = useState<string>();
  const [initials, setInitials] = useState(me ?? "");
  const attempt = useAttempt();
  const isSettled = isSettledIn(log.rows);
  const baths = log.rows.baths
    .map(rowFacts)
    .filter((bath) => bath.text("bath") !== undefined)
    .filter((bath) => bath.number("closed") !== undefined || isSettled(bath.text("bath")));
  const shown =
    baths.find((bath) => bath.text("bath") === chosen) ??
    baths.find((bath) => !isSettled(bath.text("bath"))) ??
    baths[0];
  const bath = shown?.text("bath");
  const about = (
    <p className={page.quiet}>
      Settling puts the present values in place of the formulas in the rows of a closed bath, so that Excel has less to
      recalculate with each entry. These rows no longer follow later changes: a meter check, a limit, a correction.
      Where they would differ then, Now says so, and the formulas can be put back. Money stays worked out.
    </p>
  );
  if (shown === undefined || bath === undefined)
    return (
      <>
        {about}
        <p className={page.quiet}>No bath is closed yet.</p>
      </>
    );
  const settled = isSettled(bath);
  const by = initials.trim();
  const act = settled ? putFormulasBack : settleBath;
  const Icon = act.icon;
  const start = async (): Promise<string> => {
    const said = settled ? await putFormulasBack.run({ bath }) : await settleBath.run({ bath, by, now });
    setChosen(bath);
    await refresh();
    return said;
  };
  return (
    <section className={page.page} aria-label="Settle a closed bath">
      {about}
      <ChoiceField
        label="Closed bath"
        choices={baths.map(({ text }) => text("bath") ?? "")}
        value={bath}
        onChange={setChosen}
      />
      {settled ? (
        <p className={page.quiet}>{`Bath ${bath} was ${settledWords(shown)}.`}</p>
      ) : (
        <Field label="Your initials">
          <Input
            className={control}
            size="large"
            value={initials}
            maxLength={10}
            onChange={(_, { value }) => {
              setInitials(value);
            }}
          />
        </Field>
      )}
      <Button
        size="large"
        icon={<Icon />}
        className={page.big}
        disabled={attempt.busy || (!settled && by === "")}
        onClick={() => {
          void attempt.start(start);
        }}
      >
        {attempt.busy ? "Writing…" : act.name}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}

/** For a settled row that no longer shows what its formula gives. */
export function PutBackButton({
  bath,
  refresh,
}: Pick<Props, "refresh"> & { readonly bath: string }): React.JSX.Element {
  const page = usePageStyles();
  const attempt = useAttempt();
  const Icon = putFormulasBack.icon;
  return (
    <>
      <Button
        size="large"
        icon={<Icon />}
        className={page.big}
        disabled={attempt.busy}
        onClick={() => {
          void attempt.start(async () => {
            const said = await putFormulasBack.run({ bath });
            await refresh();
            return said;
          });
        }}
      >
        {attempt.busy ? "Writing…" : putFormulasBack.name}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </>
  );
}
