/** The workbench's page: grid, host and the add-in's pane in one window. */
import { readState } from "../state/read-state.ts";
import { createHost, type Host } from "./host/create-host.ts";
import type { OSpreadsheet } from "./host/library.ts";
import { type BenchTools, benchTools } from "./page/bench-tools.ts";
import { download } from "./page/download.ts";
import type { HostWindow } from "./page/host-window.ts";
import { type Keeping, keepLog } from "./page/keep/keep-log.ts";
import { type MountedGrid, mountGrid, type Owl } from "./page/mount-grid.ts";
import { gridNotices } from "./page/notices.ts";
import { keepApp } from "./page/offer-update.ts";
import { offerOpening } from "./page/open-file.ts";
import { pageElement } from "./page/page-element.ts";
import { arrangeParts } from "./page/page-parts.ts";
import { arrangePane, openPane } from "./page/pane-frame.ts";
import { latenessOf, paneOf, readFunctions, startOf } from "./page/read-outside.ts";
import { offerCopy } from "./page/save-copy.ts";
import { NoWorker, takeWorker } from "./page/worker-control.ts";

declare const window: HostWindow & { o_spreadsheet: OSpreadsheet; owl: Owl; bathsheetWorkbench?: BenchTools };

/** One of the workbench's own files; undefined where it was not built. */
async function fileOf(name: string): Promise<unknown> {
  const response = await fetch(name);
  return response.ok ? response.json() : undefined;
}

async function openWorkbook(host: Host): Promise<Keeping> {
  const metadata = await fileOf("functions.json");
  host.loadFunctions(metadata === undefined ? { functions: [] } : readFunctions(metadata));
  const keeping = await keepLog({
    host,
    start: startOf(location.search),
    demo: async () => {
      const saved = await fileOf("demo-week.json");
      return saved === undefined ? undefined : readState(saved);
    },
    saveCopy: (name) => {
      offerCopy(host, name);
    },
    isCellBeingEdited: () => host.session.isCellBeingEdited(),
  });
  host.answerLate(latenessOf(location.search));
  return keeping;
}

/** Without the helper script the grid still works, so only the pane's place is taken by the message. */
function showTrouble(error: unknown): void {
  const paneOnly = error instanceof NoWorker;
  const what = paneOnly ? "The grid works, but the pane cannot open here." : "The workbench could not start.";
  const place = paneOnly ? document.getElementById("pane") : pageElement("notice");
  if (place === null) return;
  place.hidden = false;
  place.classList.add("trouble");
  place.replaceChildren(
    ...[what, error instanceof Error ? error.message : String(error)].map((text) =>
      Object.assign(document.createElement("p"), { textContent: text }),
    ),
  );
}

/** What the log says to the entry that was just refused in the active cell. */
function refusalWords({ workbook, model }: Host): { readonly title: string; readonly message: string } | undefined {
  const { sheetId, row, col } = model.getters.getActivePosition();
  return workbook.validations.refusalAt({ sheet: sheetId, row, column: col });
}

/** Draws the host's workbook, in the place of the grid that stood there. */
async function draw(host: Host, former?: MountedGrid): Promise<MountedGrid> {
  former?.unmount();
  const notices = gridNotices(
    () => refusalWords(host),
    () => !pageElement("sheet").inert,
  );
  const grid = await mountGrid(window.o_spreadsheet, window.owl, host.model, notices, pageElement("sheet"));
  host.session.isCellBeingEdited = grid.isCellBeingEdited;
  return grid;
}

/** A file becomes a log of its own beside the one on screen; where this device keeps none, it takes that one's place. */
function offerFiles(host: Host, keeping: Keeping, first: MountedGrid): void {
  let grid = first;
  offerOpening(pageElement("open-file"), {
    functions: () => window.o_spreadsheet.registries.functionRegistry.getKeys(),
    tryOut: (state, given) => host.tryOut(state, given),
    onScreen: keeping.onScreen,
    show: async (state, name) => {
      if (await keeping.openBeside(state, name)) return;
      host.restore(state);
      keeping.replaced(name);
      grid = await draw(host, grid);
      openPane(paneOf(location.search));
    },
  });
}

async function begin(host: Host): Promise<void> {
  arrangePane();
  arrangeParts(() => host.session.isCellBeingEdited());
  const worker = takeWorker();
  // Reported below, when the grid stands; until then a failure is not unhandled.
  worker.catch(() => undefined);
  const keeping = await openWorkbook(host);
  offerFiles(host, keeping, await draw(host));
  pageElement("notice").hidden = true;
  await worker;
  openPane(paneOf(location.search));
  await keepApp(keeping);
}

const host = createHost(window.o_spreadsheet);
host.session.openNew = (file) => {
  download(file, "hand-off-copy.xlsx");
};
window.bathsheetHost = host;
const ready = begin(host);
window.bathsheetWorkbench = benchTools(host, ready);
ready.catch(showTrouble);
