// @vitest-environment jsdom
import { FluentProvider, webLightTheme } from "@fluentui/react-components";
import { act, createElement } from "react";
import { createRoot, type Root } from "react-dom/client";
import { afterEach, beforeEach, expect, it, vi } from "vitest";

import { onThisDevice } from "../../../../src/pane/frame/on-this-device.ts";
import { draftKey, DraftsContext, draftsOn } from "../../../../src/pane/record/drafts.ts";
import type { Draft } from "../../../../src/pane/record/entry-form.ts";
import { EntryFormView } from "../../../../src/pane/record/entry-form-view.tsx";
import { fillForm } from "../../../../src/pane/record/fill-form.ts";
import { formOf } from "../../../../src/pane/record/forms.ts";
import { demoLog } from "../../excel/log/demo-log.ts";
import { bath } from "./entry-forms.ts";

const now = "2027-03-02T16:40";

/** An entry of each of the forms that are filled in every day. */
const entries = [
  ["reading", { ph: "11.2", temperature: "77" }],
  ["addition", { amount: "0.5" }],
  ["load", { claim: "D-0427", baskets: "2", soil: "light", minutes: "5" }],
  ["level make-up", { levelBefore: "23", levelAfter: "24", amount: "4", water: "CITY" }],
  ["care", { kind: "skim" }],
] as const satisfies readonly (readonly [string, Draft])[];

/** What Excel rejects with while an entry is written. */
const failures = ["GeneralException", "InvalidOperationInCellEditMode", "AccessDenied", "RequestAborted", "Busy"];

const log = await demoLog(now);
let root: Root;

beforeEach(() => {
  localStorage.clear();
  vi.stubGlobal("IS_REACT_ACT_ENVIRONMENT", true);
  const place = document.createElement("div");
  document.body.replaceChildren(place);
  root = createRoot(place);
});

afterEach(() => {
  act(() => {
    root.unmount();
  });
  vi.unstubAllGlobals();
});

it.each(entries.flatMap(([form, draft]) => failures.map((code) => [form, code, draft] as const)))(
  "a %s that Excel refuses with %s stands in its form as it was typed, and is kept",
  async (id, code, draft) => {
    const form = formOf(id);
    const context = { log, system: "US", bath, now } as const;
    expect(fillForm(form, draft, context).problems).toEqual([]);
    const drafts = draftsOn(onThisDevice("drafts of a test"));
    const asked = (fillForm(form, draft, context).meaning.doubts ?? []).join(" ");
    drafts.keep(draftKey(form, bath), { typed: draft, asked, now, bath });
    vi.stubGlobal("Excel", { run: () => Promise.reject(Object.assign(new Error("The request failed."), { code })) });
    const recorded = vi.fn();
    const nothing = (): void => undefined;
    const view = createElement(EntryFormView, {
      form,
      context,
      onBack: nothing,
      onOpen: nothing,
      onRecorded: recorded,
    });
    act(() => {
      root.render(
        createElement(FluentProvider, { theme: webLightTheme }, createElement(DraftsContext, { value: drafts }, view)),
      );
    });
    const shown = (): readonly string[] =>
      [...document.querySelectorAll("input, select, textarea")].map((control) => (control as HTMLInputElement).value);
    const before = shown();
    for (const text of Object.values<string>(draft)) expect(before).toContain(text);
    const alert = (): string => document.querySelector('[role="alert"]')?.textContent ?? "";
    act(() => {
      document.querySelector("form")?.requestSubmit();
    });
    await vi.waitFor(async () => {
      await act(() => Promise.resolve());
      expect(alert()).toMatch(/\S/);
    }, 20_000);
    expect(shown()).toEqual(before);
    expect(recorded).not.toHaveBeenCalled();
    expect(draftsOn(onThisDevice("drafts of a test")).of(draftKey(form, bath))?.typed).toEqual(draft);
  },
);
