import { makeStyles, mergeClasses } from "@fluentui/react-components";

import type { ColumnId } from "../../../joblog/formula/log-names.ts";
import type { TableId } from "../../../joblog/formula/log-types.ts";
import type { InputColumn } from "../../../joblog/model/definition.ts";
import { isKeyText } from "../../../joblog/model/key-text.ts";
import { usePageStyles } from "../../controls/use-page-styles.ts";
import { canBeNew, choicesOf, nameKey } from "../choices-of.ts";
import { pickedDotTime, pickedName, pickedOrder, wordOfName, wordOfUse } from "../picked-answers.ts";
import { questionsOn } from "../questions.ts";
import type { AdoptStepProps } from "./adopt-columns-step.tsx";
import { asOptions, Pick, TextAnswer } from "./adopt-fields.tsx";

const useStyles = makeStyles({ group: { border: "none", margin: 0, padding: 0, minWidth: 0 } });

/** What the sheet leaves open: units, the order of day and month, times, names. */
export function AdoptQuestionsStep({ sheet, answers, log, system, onAnswer }: AdoptStepProps): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const open = questionsOn(sheet, answers, log, system);
  const { units, order, timeMissing, secondTimeMissing, blanks, unitWords, names, dotted } = open;
  const setName = (column: InputColumn, text: string, word: string): void => {
    onAnswer({
      names: { ...answers.names, [column.id]: { ...answers.names[column.id], [nameKey(text)]: pickedName(word) } },
    });
  };
  const opensBath = names.some(
    ({ column, text }) => column.id === "bath" && answers.names[column.id]?.[nameKey(text)] === "new",
  );
  const setBath = (key: keyof typeof answers.newBath, value: string): void => {
    onAnswer({ newBath: { ...answers.newBath, [key]: value } });
  };
  const keys = <Table extends TableId>(table: Table, column: ColumnId<Table>) =>
    asOptions(log.rows[table].flatMap(({ cells }) => cells[column] ?? []).map(String));
  return (
    <>
      {units.length + names.length + blanks.length + unitWords.length === 0 &&
      order === undefined &&
      dotted === undefined &&
      !timeMissing &&
      !secondTimeMissing ? (
        <p>The sheet leaves nothing open.</p>
      ) : null}
      {blanks.map(({ id, heading, blanks: count }) => (
        <Pick
          key={`blank ${id}`}
          label={`${count === 1 ? "1 blank cell" : `${String(count)} blank cells`} under "${heading}"`}
          value={answers.asAbove[id] === true ? "above" : ""}
          none="Left as they are"
          options={[{ value: "above", words: "Means the same as above" }]}
          onPick={(word) => {
            onAnswer({ asAbove: { ...answers.asAbove, [id]: word === "above" } });
          }}
        />
      ))}
      {unitWords.map(({ text, choices }) => (
        <Pick
          key={`unit ${text}`}
          label={`Unit "${text}" is`}
          value={answers.unitWords[nameKey(text)] ?? ""}
          none="Not answered: rows are listed"
          options={asOptions(choices)}
          onPick={(value) => {
            onAnswer({ unitWords: { ...answers.unitWords, [nameKey(text)]: value === "" ? undefined : value } });
          }}
        />
      ))}
      {units.map(({ column, key, heading, choices }) => (
        <Pick
          key={key}
          required
          label={`Unit of "${heading}"`}
          hint={`For ${column.label}: the heading names none.`}
          value={answers.units[key] ?? ""}
          none="Choose"
          options={asOptions(choices)}
          onPick={(value) => {
            onAnswer({ units: { ...answers.units, [key]: value === "" ? undefined : value } });
          }}
        />
      ))}
      {order === undefined ? null : (
        <Pick
          required
          label="3/1/2027 is"
          hint={
            order.proposed === undefined
              ? "Dates of this sheet can be read two ways."
              : `Other dates of this column have the ${order.proposed}.`
          }
          value={answers.order ?? ""}
          none="Choose"
          options={[
            { value: "month first", words: "March 1 (month first)" },
            { value: "day first", words: "January 3 (day first)" },
          ]}
          onPick={(value) => {
            onAnswer({ order: pickedOrder(value) });
          }}
        />
      )}
      {dotted === undefined ? null : (
        <Pick
          required
          label={`The time ${dotted} is`}
          hint="A time with a point can be read two ways."
          value={answers.dotTime ?? ""}
          none="Choose"
          options={[
            { value: "clock", words: "Hours and minutes, as 9.30 is 9:30" },
            { value: "hours", words: "Hours and tenths, as 9.5 is 9:30" },
          ]}
          onPick={(value) => {
            onAnswer({ dotTime: pickedDotTime(value) });
          }}
        />
      )}
      {timeMissing ? (
        <TextAnswer
          label="Time for rows without one"
          hint="Such as 12:00. Left blank, those rows are not taken."
          value={answers.usualTime}
          onType={(usualTime) => {
            onAnswer({ usualTime });
          }}
        />
      ) : null}
      {secondTimeMissing ? (
        <TextAnswer
          label="Time of the second pH"
          hint="Such as 16:00. Left blank, it is not taken."
          value={answers.usualTime2}
          onType={(usualTime2) => {
            onAnswer({ usualTime2 });
          }}
        />
      ) : null}
      {names.map(({ column, text }) => (
        <Pick
          key={`${column.id} ${text}`}
          label={`${column.label} "${text}" is`}
          value={wordOfName(answers.names[column.id]?.[nameKey(text)])}
          none="Not answered: rows are listed"
          options={[
            ...(choicesOf(column, log) ?? []).map((choice) => ({ value: wordOfUse(choice), words: choice })),
            ...(canBeNew(column, answers.table) && isKeyText(text)
              ? [{ value: "new", words: `New: add "${text}" to the log` }]
              : []),
            { value: "leave out", words: "Leave these rows out" },
          ]}
          onPick={(word) => {
            setName(column, text, word);
          }}
        />
      ))}
      {opensBath ? (
        <fieldset className={mergeClasses(page.page, styles.group)}>
          <legend className={page.section}>New baths were filled with</legend>
          <Pick
            required
            label="Tank"
            value={answers.newBath.tank}
            none="Choose"
            options={keys("tanks", "tank")}
            onPick={(value) => {
              setBath("tank", value);
            }}
          />
          <Pick
            required
            label="Water"
            value={answers.newBath.water}
            none="Choose"
            options={keys("waters", "water")}
            onPick={(value) => {
              setBath("water", value);
            }}
          />
          <Pick
            required
            label="Concentrate"
            value={answers.newBath.concentrate}
            none="Choose"
            options={keys("concentrates", "concentrate")}
            onPick={(value) => {
              setBath("concentrate", value);
            }}
          />
          <TextAnswer
            label="Strength wanted"
            hint="Written 1+40, 1 in 40, 2.5% or 3 fl oz/gal."
            value={answers.newBath.strength}
            onType={(value) => {
              setBath("strength", value);
            }}
          />
        </fieldset>
      ) : null}
    </>
  );
}
