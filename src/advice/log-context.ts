import type { UnitSystem } from "../core/units/unit-system.ts";
import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";

/** A log as advice looks at it. */
export interface LogContext {
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
  /** The bath chosen in the pane, if the log has any. */
  readonly bath: string | undefined;
  /** The present moment of the log as a date-time field writes it. */
  readonly now: string;
  /** The initials of whoever works on this device, if they said so. */
  readonly me?: string | undefined;
}
