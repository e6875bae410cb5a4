import { useEffect, useState } from "react";

/** A finger that is on its way lands within this time (no source). */
const onItsWay = 600;

/** False for a moment after `layout` changed: what moves under a finger then is not what the finger was meant for. */
export function useSteady(layout: string): boolean {
  const [steady, setSteady] = useState<string>();
  useEffect(() => {
    const timer = setTimeout(() => {
      setSteady(layout);
    }, onItsWay);
    return () => {
      clearTimeout(timer);
    };
  }, [layout]);
  return steady === layout;
}
