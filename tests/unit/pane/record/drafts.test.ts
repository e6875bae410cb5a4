import { describe, expect, it } from "vitest";

import type { OnThisDevice } from "../../../../src/pane/frame/on-this-device.ts";
import { draftKey, draftsOn, type FormDraft } from "../../../../src/pane/record/drafts.ts";

/** A device that hands back what was written, as text in between, like a browser's storage. */
function device(kept?: unknown): OnThisDevice {
  let text = kept === undefined ? undefined : JSON.stringify(kept);
  return {
    read: () => (text === undefined ? undefined : (JSON.parse(text) as unknown)),
    write: (value) => {
      text = value === undefined ? undefined : JSON.stringify(value);
    },
  };
}

const draft: FormDraft = { typed: { ph: "10.83" }, asked: "Was it typed right?", now: "2027-03-04T08:25", bath: "B-1" };

describe("drafts", () => {
  it("outlast the pane, with the question that waits, the moment and the bath", () => {
    const storage = device();
    draftsOn(storage).keep("reading", draft);
    expect(draftsOn(storage).of("reading")).toEqual(draft);
    expect(draftsOn(storage).of("load")).toBeUndefined();
  });

  it.each([
    ["nothing is typed any more", { ...draft, typed: { ph: " " } }],
    ["all was cleared", { ...draft, typed: {} }],
  ])("are let go where %s", (_what, empty) => {
    const storage = device();
    const drafts = draftsOn(storage);
    drafts.keep("reading", draft);
    drafts.keep("reading", empty);
    expect([drafts.of("reading"), storage.read()]).toEqual([undefined, undefined]);
  });

  it.each([
    ["text", "reading"],
    ["a list", [draft]],
    ["drafts without a moment", { reading: { typed: { ph: "10.83" }, asked: "" } }],
    ["a draft that is none", { reading: null }],
  ])("start empty where the storage holds %s", (_what, kept) => {
    const drafts = draftsOn(device(kept));
    expect(drafts.of("reading")).toBeUndefined();
  });

  it("take over the texts of a draft alone", () => {
    const drafts = draftsOn(device({ reading: { ...draft, typed: { ph: "10.83", temperature: 78 } } }));
    expect(drafts.of("reading")?.typed).toEqual({ ph: "10.83" });
  });

  it("of a form about a bath are one for each bath, of others one", () => {
    const reading = { id: "reading", needs: "bath" } as const;
    expect(draftKey(reading, "B-1")).not.toBe(draftKey(reading, "B-2"));
    const item = { id: "item", needs: "log" } as const;
    expect(draftKey(item, "B-1")).toBe(draftKey(item, "B-2"));
  });

  it("say after a fault whether the open form had one", () => {
    const drafts = draftsOn(device());
    drafts.keep("reading", draft);
    drafts.noteFault();
    expect(drafts.wasDrafted()).toBe(true);
    drafts.leave();
    drafts.noteFault();
    expect(drafts.wasDrafted()).toBe(false);
  });
});
