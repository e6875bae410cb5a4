/** Invented data, as all of the demo week: bench tests, failures too. A form's note belongs to a surface that did not pass. */
import { bathOne, bathTwo, march, typed, type WeekEvent } from "./week-event.ts";

type Outcome = "pass" | readonly [result: "partial" | "fail", left: string];

interface Round {
  readonly at: string;
  readonly bath: string;
  readonly initials: string;
  readonly water?: string;
  readonly outcomes: Readonly<Record<string, Outcome>>;
}

const rounds: readonly Round[] = [
  {
    at: march(1, "09:05"),
    bath: bathOne,
    initials: "KT",
    outcomes: {
      "painted or decorated": "pass",
      "smooth ceramic or glass": "pass",
      metal: "pass",
      plastic: ["partial", "ABS toy part: smear left"],
      "sealed wood": ["fail", "varnished oak offcut: soot drags"],
    },
  },
  {
    at: march(1, "09:35"),
    bath: bathOne,
    initials: "KT",
    outcomes: {
      "painted or decorated": "pass",
      "smooth ceramic or glass": "pass",
      metal: "pass",
      plastic: "pass",
      "sealed wood": "pass",
    },
  },
  {
    at: march(3, "10:45"),
    bath: bathTwo,
    initials: "MV",
    outcomes: {
      "smooth ceramic or glass": "pass",
      plastic: ["fail", "ABS toy part: soot smears"],
      other: ["partial", "pewter-look resin"],
    },
  },
  {
    at: march(3, "11:15"),
    bath: bathTwo,
    initials: "MV",
    outcomes: { "smooth ceramic or glass": "pass", plastic: "pass", other: "pass" },
  },
  {
    at: march(4, "09:45"),
    bath: bathOne,
    initials: "KT",
    outcomes: {
      "painted or decorated": "pass",
      "smooth ceramic or glass": "pass",
      plastic: "pass",
      "sealed wood": "pass",
    },
  },
  {
    at: march(4, "16:00"),
    bath: bathOne,
    initials: "MV",
    water: "CITY",
    outcomes: {
      "smooth ceramic or glass": "pass",
      plastic: ["partial", "ABS toy part: gray film"],
      "sealed wood": ["fail", "varnished oak offcut: film on wipe"],
    },
  },
  {
    at: march(5, "08:15"),
    bath: bathOne,
    initials: "KT",
    outcomes: { "smooth ceramic or glass": "pass", plastic: "pass", "sealed wood": "pass" },
  },
];

function outcomeFields(outcomes: Round["outcomes"]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(outcomes).flatMap(([surface, outcome]): readonly (readonly [string, string])[] =>
      outcome === "pass"
        ? [[`result ${surface}`, outcome]]
        : [
            [`result ${surface}`, outcome[0]],
            [`note ${surface}`, outcome[1]],
          ],
    ),
  );
}

export const benchTestEvents: readonly WeekEvent[] = rounds.map(({ at, bath, initials, water, outcomes }) => ({
  at,
  entry: "bench test",
  bath,
  draft: typed({ ...outcomeFields(outcomes), water, method: "dwell and wipe", dwell: 30, initials }),
}));
