import { useEffect, useState } from "react";

/** Before it is measured, the width of a drawing in the narrowest pane. */
const narrowest = 288;

/** How wide the framed element is now, so that a drawing in it keeps the size of its words. */
export function useWidth(): { readonly frame: (element: HTMLElement | null) => void; readonly width: number } {
  const [element, setElement] = useState<HTMLElement | null>(null);
  const [width, setWidth] = useState(narrowest);
  useEffect(() => {
    if (element === null) return undefined;
    const observer = new ResizeObserver(() => {
      setWidth(Math.max(narrowest, element.clientWidth));
    });
    observer.observe(element);
    return () => {
      observer.disconnect();
    };
  }, [element]);
  return { frame: setElement, width };
}
