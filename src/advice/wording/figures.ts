/** A number as the pane shows it: at most `digits` decimals, no trailing zeros beyond `least`. */
export function figure(value: number, digits: number, least = 0): string {
  return value.toLocaleString("en-US", {
    minimumFractionDigits: least,
    maximumFractionDigits: digits,
    useGrouping: false,
  });
}

/** pH to the hundredth, as meters show it. */
export function ph(value: number): string {
  return figure(value, 2, 2);
}

/** A volume: three figures that matter, never more than three decimals. */
export function amount(value: number): string {
  const size = Math.abs(value);
  return figure(value, size >= 100 ? 1 : size >= 0.1 || size === 0 ? 2 : 3);
}

export function degrees(value: number): string {
  return figure(value, 1);
}

export function percent(share: number): string {
  return `${figure(share * 100, 0)}%`;
}

/** To the cent as the sheets round it, where half a cent stays half a cent in every unit. */
export function money(value: number): string {
  return Number(value.toFixed(6)).toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 });
}

/** The same with the sign of the log's currency; without one where the log names none that is known. */
export function moneyIn(value: number, currency: unknown): string {
  if (typeof currency !== "string" || !/^[A-Z]{3}$/.test(currency)) return money(value);
  return Number(value.toFixed(6)).toLocaleString("en-US", { style: "currency", currency });
}
