import { describe, expect, it } from "vitest";

import { fillForm } from "../../../../src/pane/record/fill-form.ts";
import { forms } from "../../../../src/pane/record/forms.ts";
import { demoLog } from "../../excel/log/demo-log.ts";
import { bath } from "./entry-forms.ts";

const now = "2027-03-02T16:40";
const log = await demoLog(now);

/** Forms whose rows name who did it. */
const named = forms.filter((form) =>
  fillForm(form, {}, { log, system: "US", bath, now })
    .groups.flatMap(({ fields }) => fields)
    .some(({ isWho }) => isWho === true),
);

describe("whoever works on this device", () => {
  it("is asked for by most forms", () => {
    expect(named.length).toBeGreaterThan(7);
  });

  it.each(named.map((form) => [form.id, form] as const))(
    "is proposed in the form %s, and gives way to what is typed",
    (_id, form) => {
      const context = { log, system: "US", bath, now, me: "KT" } as const;
      const field = fillForm(form, {}, context)
        .groups.flatMap(({ fields }) => fields)
        .find(({ isWho }) => isWho === true);
      const key = field?.key ?? "";
      expect(fillForm(form, {}, context).values[key]).toBe("KT");
      expect(fillForm(form, { [key]: "RM" }, context).values[key]).toBe("RM");
      expect(fillForm(form, { [key]: "" }, context).values[key]).toBe("");
    },
  );

  it("does not sign a release", () => {
    const release = forms.find(({ id }) => id === "release");
    if (release === undefined) throw new Error("There is no form for a release.");
    expect(fillForm(release, {}, { log, system: "US", bath, now, me: "KT" }).values["initials"] ?? "").toBe("");
  });
});
