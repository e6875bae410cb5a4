import { type RefObject, useEffect, useRef } from "react";

/**
 * For the heading of what replaces another view at a person's wish: the button they pressed is gone, so
 * the focus goes to where reading goes on.
 */
export function useFocusOnShow<Element extends HTMLElement>(wanted: boolean): RefObject<Element | null> {
  const element = useRef<Element>(null);
  useEffect(() => {
    if (wanted) element.current?.focus();
  }, [wanted]);
  return element;
}
