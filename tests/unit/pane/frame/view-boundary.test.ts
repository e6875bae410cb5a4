// @vitest-environment jsdom
import { FluentProvider, webLightTheme } from "@fluentui/react-components";
import { AddCircleRegular } from "@fluentui/react-icons/svg/add-circle";
import { act, createElement, useState } from "react";
import { createRoot, type Root } from "react-dom/client";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";

import { FaultView } from "../../../../src/pane/frame/fault-view.tsx";
import { onThisDevice } from "../../../../src/pane/frame/on-this-device.ts";
import { ViewBoundary } from "../../../../src/pane/frame/view-boundary.tsx";
import { DraftsContext, draftsOn } from "../../../../src/pane/record/drafts.ts";
import type { EntryForm } from "../../../../src/pane/record/entry-form.ts";
import { EntryFormView } from "../../../../src/pane/record/entry-form-view.tsx";
import { field } from "../../../../src/pane/record/fields-of.ts";
import type { EntryId } from "../../../../src/pane/record/forms.ts";

const log = { fields: {}, rows: {} } as never;

/** A form that cannot take the word "fault". */
const form: EntryForm<EntryId> = {
  id: "care",
  title: "Care",
  icon: AddCircleRegular,
  needs: "log",
  purpose: "A form of this test.",
  submit: "Record",
  groups: () => [{ fields: [field(undefined, "care", "note"), field(undefined, "care", "initials")] }],
  proposals: () => ({}),
  meaning: (filled) => {
    if (filled.text("note") === "fault") throw new RangeError("The form has no answer.");
    return { findings: [], problems: [], rows: [], recorded: "care" };
  },
};

function Whole(): React.JSX.Element {
  const [drafts] = useState(() => draftsOn(onThisDevice("drafts of a test")));
  const [view, setView] = useState("record");
  return createElement(
    FluentProvider,
    { theme: webLightTheme },
    createElement(
      DraftsContext,
      { value: drafts },
      createElement(
        "button",
        {
          onClick: () => {
            setView("record");
          },
        },
        "Record tab",
      ),
      createElement(ViewBoundary, {
        of: view,
        onFault: drafts.noteFault,
        instead: (fault, again) =>
          createElement(FaultView, {
            fault,
            drafted: drafts.wasDrafted(),
            onAgain: again,
            onNow: () => {
              setView("now");
            },
          }),
        children:
          view === "now"
            ? createElement("p", {}, "This is Now")
            : createElement(EntryFormView, {
                form,
                context: { log, system: "US", bath: undefined, now: "2027-03-08T08:50" },
                onBack: () => {
                  setView("now");
                },
                onOpen: () => undefined,
                onRecorded: () => undefined,
              }),
      }),
    ),
  );
}

let root: Root;

beforeEach(() => {
  localStorage.clear();
  vi.stubGlobal("IS_REACT_ACT_ENVIRONMENT", true);
  vi.spyOn(console, "error").mockImplementation(() => undefined);
  const place = document.createElement("div");
  document.body.replaceChildren(place);
  root = createRoot(place);
  act(() => {
    root.render(createElement(Whole));
  });
});

afterEach(() => {
  act(() => {
    root.unmount();
  });
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const text = (): string => document.body.textContent;

function press(name: string): void {
  const button = [...document.querySelectorAll("button")].find((one) => one.textContent === name);
  if (button === undefined) throw new Error(`There is no button ${name} in: ${text()}`);
  act(() => {
    button.click();
  });
}

function input(label: string): HTMLInputElement | HTMLTextAreaElement {
  const found = [...document.querySelectorAll("label")].find((one) => one.textContent.startsWith(label));
  const control = document.getElementById(found?.htmlFor ?? "");
  if (control instanceof HTMLInputElement || control instanceof HTMLTextAreaElement) return control;
  throw new Error(`There is no field ${label} in: ${document.body.innerHTML}`);
}

function type(label: string, value: string): void {
  const control = input(label);
  const kind = control instanceof HTMLInputElement ? HTMLInputElement : HTMLTextAreaElement;
  act(() => {
    // React listens to the setter of the element itself; a person's key goes past it.
    Object.getOwnPropertyDescriptor(kind.prototype, "value")?.set?.call(control, value);
    control.dispatchEvent(new Event("input", { bubbles: true }));
  });
}

describe("a view that cannot be drawn", () => {
  it("says what happened, goes back to Now, and the form opens again with what was typed", () => {
    type("Initials", "AB");
    type("Note", "foam");
    type("Note", "fault");
    expect(text()).toContain("This view could not be shown");
    expect(text()).toContain("the workbook is as it was. What you typed is kept, but for the last change.");
    expect(document.querySelector("textarea")?.value).toMatch(
      /^RangeError: The form has no answer\.\n(.|\n)*EntryFormView/,
    );
    press("Go back to Now");
    expect(text()).toContain("This is Now");
    press("Record tab");
    expect([input("Initials").value, input("Note").value]).toEqual(["AB", "foam"]);
  });

  it("opens the form again at once, and keeps the draft of a form that is left", () => {
    type("Initials", "AB");
    type("Note", "fault");
    press("Open the form again");
    expect([input("Initials").value, input("Note").value]).toEqual(["AB", ""]);
    press("All entries");
    press("Record tab");
    expect(input("Initials").value).toBe("AB");
    expect(text()).toContain("Begun Mar 8, 08:50 and not recorded yet.");
  });

  it("keeps nothing of a form that was cleared before the fault", () => {
    type("Initials", "AB");
    press("Clear");
    type("Note", "fault");
    expect(text()).not.toContain("What you typed is kept");
    press("Show it again");
    expect(input("Initials").value).toBe("");
  });
});
