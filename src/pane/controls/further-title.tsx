import { Button } from "@fluentui/react-components";
import { ArrowLeftRegular } from "@fluentui/react-icons/svg/arrow-left";

import { useFocusOnShow } from "./use-focus-on-show.ts";
import { usePageStyles } from "./use-page-styles.ts";

/** How a view from the list behind More begins: the way back, what it is, and where reading goes on. */
export function FurtherTitle({
  title,
  about,
  onMore,
}: {
  readonly title: string;
  readonly about: string;
  readonly onMore: () => void;
}): React.JSX.Element {
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  return (
    <>
      <Button appearance="subtle" icon={<ArrowLeftRegular />} className={page.back} onClick={onMore}>
        More
      </Button>
      <div>
        <h2 ref={heading} tabIndex={-1} className={page.title}>
          {title}
        </h2>
        <p className={page.quiet}>{about}</p>
      </div>
    </>
  );
}
