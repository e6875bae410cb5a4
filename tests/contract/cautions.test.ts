import { createDOMRenderer, RendererProvider } from "@fluentui/react-components";
import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { beforeAll, describe, expect, it, vi } from "vitest";

import { referenceOf } from "../../functions/reference-of.ts";
import { referencePage } from "../../scripts/reference-page/reference-page.ts";
import type { LogContext } from "../../src/advice/log-context.ts";
import { cautionsOfForm, formCautions, formsWith } from "../../src/core/safety/caution-places.ts";
import { arithmeticAid, cautions } from "../../src/core/safety/cautions.ts";
import { jobLog } from "../../src/joblog/job-log.ts";
import { layOut } from "../../src/joblog/layout/lay-out.ts";
import { AllCautions, ShortCautions } from "../../src/pane/controls/step-cautions.tsx";
import { EntryFormView } from "../../src/pane/record/entry-form-view.tsx";
import { forms } from "../../src/pane/record/forms.ts";
import { demoLog } from "../unit/excel/log/demo-log.ts";

/**
 * What must be said where, written down without regard to where the add-in keeps it: the words by which a reader
 * knows the caution, the forms (by id), the sheets (by id) and functions whose results lead to that step.
 */
const mustSay = [
  {
    what: "gloves and goggles",
    words: [/goggles/i, /gloves/],
    forms: [
      ...["charge", "bench test", "baseline", "reading", "addition", "level make-up", "load", "care"],
      ...["meter check", "change-out", "release", "stock move", "shop"],
    ],
    sheets: ["baths", "additions", "benchTests", "readings", "loads", "care", "meter", "release", "notes"],
    functions: ["DOSE", "DOSETABLE", "TOPUP", "TOPUPRANGE", "MAKEUP", "ACIDTO", "ALKALINITY"],
  },
  {
    what: "alkali in the eyes",
    words: [/burns? skin and eyes/, /15 minutes, then see a doctor/],
    forms: ["charge", "bench test", "baseline", "reading", "addition", "level make-up", "load", "care", "release"],
    sheets: ["baths", "additions", "benchTests", "notes"],
    functions: ["DOSE", "TOPUP", "MAKEUP", "ALKALINITY"],
  },
  {
    what: "eyewash and shower",
    words: [/10 seconds/, /15 minutes of flow/, /0\.4 gal\/min/, /20 gal\/min/],
    forms: ["charge", "bench test", "addition", "level make-up", "care", "release", "stock move", "shop"],
    sheets: ["shop"],
    functions: ["DOSE", "TOPUP", "ACIDTO"],
  },
  {
    what: "concentrate into cold water",
    words: [/to cold water/, /Never add water to concentrate/],
    forms: ["charge"],
    sheets: ["baths"],
    functions: ["DOSE", "HARDNESSDOSE"],
  },
  {
    what: "the label's highest strength",
    words: [/label's highest strength wins/i],
    forms: ["charge", "addition"],
    sheets: ["baths", "additions"],
    functions: ["DOSE", "TOPUP", "NEXTADD", "JARDOSE"],
  },
  {
    what: "a top-up goes in slowly, with the tank at rest",
    words: [/slowly, with the tank not running: a hot bath splashes/],
    forms: ["addition", "level make-up"],
    sheets: ["additions"],
    functions: ["TOPUP", "NEXTADD", "MAKEUP"],
  },
  {
    what: "acid slowly, cooled, never into concentrate",
    words: [/acid slowly to the cooled, mixing bath, never to undiluted concentrate/],
    forms: ["release", "change-out"],
    sheets: ["release"],
    functions: ["ACIDFOR", "ACIDTO", "ACIDSTAGES"],
  },
  {
    what: "hands out, lid, hearing",
    words: [/hands and tools out/i, /keep the lid on, wear hearing protection/],
    forms: ["load", "baseline", "reading", "addition", "level make-up", "care"],
    sheets: ["loads", "readings", "care"],
    functions: [],
  },
  {
    what: "how fast a hot bath burns",
    words: [/131 °F \(55 °C\)/, /17 seconds/, /140 °F \(60 °C\)/],
    forms: ["charge", "baseline", "reading", "load", "addition", "level make-up", "care", "change-out", "release"],
    sheets: ["baths", "additions", "loads", "readings", "care"],
    functions: ["HEATTIME", "HEATENERGY", "TOPUP"],
  },
  {
    what: "heaters and ultrasound off, heaters never dry",
    words: [/heaters and ultrasound off/i, /never run heaters dry/],
    forms: ["charge", "level make-up", "care", "change-out", "release"],
    sheets: ["baths", "additions", "care", "release"],
    functions: ["HEATTIME", "HEATENERGY", "ACIDTO"],
  },
  {
    what: "metals and their alloys",
    words: [/aluminum, zinc, galvanized pieces, tin, lead and their alloys/, /hydrogen/],
    forms: ["item", "load", "charge", "bench test"],
    sheets: ["items", "job"],
    functions: ["DOSE", "DOSETABLE"],
  },
  {
    what: "lead, asbestos, arsenic, cadmium, PAH and the respirator",
    words: [/1978/, /lead/, /asbestos, arsenic, cadmium and PAH/, /wipe-test/, /respirator/],
    forms: ["item", "load", "bench test", "care"],
    sheets: ["items", "job", "loads", "care"],
    functions: [],
  },
  {
    what: "batteries, aerosols, fuel",
    words: [/Batteries/, /aerosols/, /fuel/, /never go in a tank/],
    forms: ["item", "load"],
    sheets: ["items", "job"],
    functions: [],
  },
  {
    what: "never mix",
    words: [/never mix/i, /bleach, ammonia or acid cleaners/],
    forms: [
      ...["charge", "addition", "level make-up", "bench test", "care", "release", "change-out", "meter check"],
      ...["stock move", "shop"],
    ],
    sheets: ["baths", "additions", "benchTests", "care", "release", "stock", "notes", "meter"],
    functions: ["DOSE", "TOPUP", "ACIDFOR", "ACIDTO"],
  },
  {
    what: "label every bottle with identity and hazard",
    words: [/label every bottle with what is in it and its hazard/i],
    forms: ["bench test", "charge", "addition", "stock move", "shop"],
    sheets: ["benchTests", "stock"],
    functions: [],
  },
  {
    what: "the permit, with its figures",
    words: [/permission to discharge/, /pH 5\.0/, /104 °F \(40 °C\)/, /storm drain/, /septic/, /tell the authority/],
    forms: ["release", "change-out"],
    sheets: ["release"],
    functions: ["DISCHARGECHECK", "CORROSIVE", "ACIDTO"],
  },
  {
    what: "D002",
    words: [/12\.5/, /D002/, /pH 12 buffer/],
    forms: ["release", "change-out", "stock move"],
    sheets: ["release", "stock"],
    functions: ["DISCHARGECHECK", "CORROSIVE"],
  },
  {
    what: "sludge by TCLP, all four metals",
    words: [/TCLP/, /arsenic, chromium or lead, 1\.0 cadmium/, /drum/],
    forms: ["care", "change-out", "release", "item"],
    sheets: ["care", "release"],
    functions: ["DISCHARGECHECK", "CORROSIVE"],
  },
  {
    what: "which acid cleans an electrode, how strong, after which rinse",
    words: [/hydrochloric acid 1\+9 \(1 part into 9 parts of water\)/, /rinse until no detergent is left/],
    forms: ["meter check"],
    sheets: ["meter"],
    functions: [],
  },
] as const;

/** Words of a page as a reader sees them. */
function wordsOf(markup: string): string {
  return markup
    .replace(/<[^>]+>/g, " ")
    .replaceAll("&#x27;", "'")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ");
}

const page = referencePage();

function sectionOf(anchor: string): string {
  const start = page.indexOf(`aria-labelledby="${anchor}"`);
  return start < 0 ? "" : wordsOf(page.slice(start).split("</section>")[0] ?? "");
}

const sheets = new Map(
  layOut(jobLog, { system: "US" }, { fields: {}, rows: {} }).sheets.map(({ id, cells }) => [
    id,
    cells.flatMap((cell) => (cell.style === "caution" && cell.kind === "value" ? [String(cell.value)] : [])).join(" "),
  ]),
);

/** What each form shows when opened, and the part of it that stands there before anyone asks for more. */
const shown = new Map<string, { readonly all: string; readonly first: string }>();

const nothing = (): void => undefined;

beforeAll(async () => {
  const log = await demoLog("2027-03-01T16:00");
  const context: LogContext = { log, system: "US", bath: "B-T1-0301", now: "2027-03-01T16:40" };
  const views = [
    ...forms.map((form) => ({
      id: form.id,
      view: createElement(EntryFormView, { form, context, onBack: nothing, onOpen: nothing, onRecorded: nothing }),
    })),
    {
      id: "shop",
      view: [
        createElement(ShortCautions, { of: "shop", key: "short" }),
        createElement(AllCautions, { of: "shop", key: "all" }),
      ],
    },
  ];
  // The host in which the log was opened has half a document; styles want a whole one, or none as on a server.
  vi.stubGlobal("document", undefined);
  const renderer = createDOMRenderer();
  for (const { id, view } of views) {
    const markup = renderToStaticMarkup(createElement(RendererProvider, { renderer, children: view }));
    shown.set(id, { all: wordsOf(markup), first: wordsOf(markup.split("<details")[0] ?? "") });
  }
  vi.unstubAllGlobals();
});

describe.each(mustSay)("$what", ({ words, forms: inForms, sheets: onSheets, functions: withFunctions }) => {
  it.each(inForms)("is said in the form %s", (form) => {
    for (const word of words) expect(shown.get(form)?.all).toMatch(word);
  });

  it.each(onSheets)("is said on the sheet %s", (sheet) => {
    for (const word of words) expect(sheets.get(sheet)).toMatch(word);
  });

  it.each(["safety", ...withFunctions])("is said in the reference under %s", (anchor) => {
    for (const word of words) expect(sectionOf(anchor.toLowerCase())).toMatch(word);
  });
});

const all = Object.entries(cautions);

describe("every caution", () => {
  it.each(all)("%s stands in full in each form that is to show it, its short form at once", (id, { short, text }) => {
    const places = Object.keys(formCautions).filter((form) => formsWith(id as keyof typeof cautions).includes(form));
    expect(places).not.toEqual([]);
    for (const form of places) {
      expect([form, shown.get(form)?.all]).toEqual([form, expect.stringContaining(text) as unknown]);
      const atOnce = cautionsOfForm(form)?.first.some((one) => one.short === short) ?? false;
      expect([form, shown.get(form)?.first.includes(short)]).toEqual([form, atOnce]);
    }
  });

  it.each(all)("%s is in the reference with its steps and its source", (_id, { text, source }) => {
    expect(sectionOf("safety")).toContain(text);
    expect(sectionOf("safety")).toContain(source);
  });
});

describe("the cautions of a form", () => {
  it("are known for each form in which someone gets near a bath, a piece or a chemical", () => {
    expect(forms.map(({ id }) => id).filter((id) => cautionsOfForm(id) === undefined)).toEqual([
      "written baseline",
      "correction",
      "cost line",
    ]);
  });

  it("name forms that there are", () => {
    const known: readonly string[] = [...forms.map(({ id }) => id), "shop"];
    expect(Object.keys(formCautions).filter((form) => !known.includes(form))).toEqual([]);
  });

  it("leave the fields in sight: at most 270 characters at once", () => {
    for (const form of Object.keys(formCautions)) {
      const said = cautionsOfForm(form)?.first.map(({ short }) => short) ?? [];
      expect([form, said.join(" ").length <= 270]).toEqual([form, true]);
      expect([form, new Set(said).size]).toEqual([form, said.length]);
    }
  });
});

describe("the arithmetic aid", () => {
  it("is said at the top of the reference, and no function promises a release", () => {
    expect(page).toContain(`<p class="motto">${arithmeticAid}</p>`);
    for (const id of ["DISCHARGECHECK", "ACIDTO", "ACIDFOR"])
      expect(referenceOf(id).cautions.map(({ text }) => text)).toContain(cautions.permit.text);
  });
});
