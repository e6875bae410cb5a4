import { usePageStyles } from "./use-page-styles.ts";

/** How much a form still wants put right, said at its button; nothing where nothing is wrong. */
export function ProblemCount({ count }: { readonly count: number }): React.JSX.Element | null {
  const page = usePageStyles();
  if (count === 0) return null;
  return (
    <p role="alert" className={page.wrong}>
      {count === 1 ? "1 problem above." : `${String(count)} problems above.`}
    </p>
  );
}
