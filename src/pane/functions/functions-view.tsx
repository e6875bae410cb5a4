import { Field } from "@fluentui/react-components";
import { SearchRegular } from "@fluentui/react-icons/svg/search";
import { Input } from "@fluentui/react-input";
import { useState } from "react";

import { catalogue } from "../../../functions/catalogue.ts";
import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";
import { FurtherTitle } from "../controls/further-title.tsx";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { FunctionCard } from "./function-card.tsx";
import { searchFunctions } from "./function-search.ts";
import { putInSheet } from "./put-in-sheet.ts";

/** The reference of all worksheet functions, searchable; an example goes to the sheet with one click. */
export function FunctionsView({ onMore }: { readonly onMore: () => void }): React.JSX.Element {
  const page = usePageStyles();
  const { control } = useControlStyles();
  const [query, setQuery] = useState("");
  const [said, setSaid] = useState("");
  const [failure, setFailure] = useState<LogProblem>();
  const found = searchFunctions(catalogue, query);
  const categories = [...new Set(found.map((fn) => fn.category))];

  const put = async (formula: string): Promise<void> => {
    setSaid("");
    setFailure(undefined);
    try {
      setSaid(`The formula is in ${await putInSheet.run(formula)}.`);
    } catch (error) {
      setFailure(problemFrom(error));
    }
  };

  return (
    <section className={page.page} aria-label="Functions">
      <FurtherTitle title="Worksheet functions" about="Type =BATH. in a cell to use one." onMore={onMore} />
      <Field label="Search the functions" hint={`${String(found.length)} of ${String(catalogue.length)}.`}>
        <Input
          className={control}
          size="large"
          type="search"
          contentBefore={<SearchRegular />}
          value={query}
          onChange={(_, data) => {
            setQuery(data.value);
          }}
        />
      </Field>
      <p role="status" className={page.quiet} hidden={said === ""}>
        {said}
      </p>
      {failure === undefined ? null : <ProblemBar problem={failure} />}
      {found.length === 0 ? (
        <p className={page.quiet}>No function mentions that. Try another word, such as dose, trigger or hardness.</p>
      ) : null}
      {categories.map((category) => (
        <section key={category} aria-label={category}>
          <h3 className={page.section}>{category}</h3>
          {found
            .filter((fn) => fn.category === category)
            .map((fn) => (
              <FunctionCard
                key={fn.id}
                fn={fn}
                onPut={(formula) => {
                  void put(formula);
                }}
              />
            ))}
        </section>
      ))}
    </section>
  );
}
