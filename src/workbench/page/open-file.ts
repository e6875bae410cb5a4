import type { WorkbookState } from "../../state/workbook-state.ts";
import type { GivenValues, TriedOut } from "../host/state/try-out.ts";
import { answerButton, ask, stayingToast } from "./notices.ts";
import { askToOpen } from "./opening-dialog.ts";
import { FileNotRead, type FoundWorkbook, readFile } from "./read-file.ts";

/** What opening a file needs of the page. */
export interface OpeningPage {
  /** Names of the functions that the grid works out. */
  readonly functions: () => readonly string[];
  /** Works a workbook out beside the one on screen; throws where the grid cannot hold it. */
  readonly tryOut: (state: WorkbookState, given: GivenValues) => TriedOut;
  /** What becomes of the log on screen when another is opened, in a sentence. */
  readonly onScreen: () => string;
  /** Opens a workbook as a log of its own; throws, and changes nothing, where the grid cannot hold it. */
  readonly show: (state: WorkbookState, name: string) => Promise<void>;
}

function refuse(title: string, message: string): void {
  ask(title, message, [answerButton("OK", "ok")], () => undefined);
}

/** With what the grid makes of it; a job log alone has nothing that would come out otherwise. */
function tried(found: FoundWorkbook, page: OpeningPage): FoundWorkbook {
  if (Object.values(found.values).every((values) => values.length === 0)) return found;
  const { state, differences } = page.tryOut(found.state, found.values);
  return { ...found, state, losses: [...found.losses, ...differences] };
}

async function open(file: File, page: OpeningPage): Promise<void> {
  const done = stayingToast(`Reading ${file.name}…`);
  const read = await readFile(file, page.functions()).finally(done);
  try {
    const found = tried(read, page);
    if (!(await askToOpen(file.name, found, page.onScreen()))) return;
    await page.show(found.state, file.name.replace(/\.xlsx$/i, ""));
  } catch (error) {
    throw new FileNotRead(
      `The grid cannot hold this workbook (${error instanceof Error ? error.message : String(error)}). What was on screen is still there.`,
    );
  }
}

/** Opens a file after asking, and says it where it cannot be opened. */
async function openOrSay(file: File, page: OpeningPage): Promise<void> {
  try {
    await open(file, page);
  } catch (error) {
    if (!(error instanceof FileNotRead)) throw error;
    refuse(`${file.name} cannot be opened`, error.message);
  }
}

function carriesFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes("Files") === true;
}

/** A file is dropped anywhere on the page; while one is dragged, a cover keeps the pane's frame from taking it. */
function takeDrops(take: (file: File) => void): void {
  const cover = Object.assign(document.createElement("div"), {
    className: "drop-here",
    textContent: "Drop a workbook (.xlsx) here to open it",
    hidden: true,
  });
  document.body.append(cover);
  const show = (shown: boolean): void => {
    cover.hidden = !shown;
  };
  document.addEventListener("dragenter", (event) => {
    if (carriesFiles(event)) show(true);
  });
  cover.addEventListener("dragover", (event) => {
    event.preventDefault();
  });
  cover.addEventListener("dragleave", () => {
    show(false);
  });
  cover.addEventListener("drop", (event) => {
    event.preventDefault();
    show(false);
    const [file] = event.dataTransfer?.files ?? [];
    if (file !== undefined) take(file);
  });
}

/** Makes the page's button ask for a file, and the page take dropped ones. Call once. */
export function offerOpening(button: HTMLElement, page: OpeningPage): void {
  const picker = Object.assign(document.createElement("input"), {
    type: "file",
    accept: ".xlsx,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    hidden: true,
  });
  picker.setAttribute("aria-label", "Workbook to open");
  button.after(picker);
  let isBusy = false;
  const take = (file: File): void => {
    // Two files at once would each ask about the same workbook on screen.
    if (isBusy) return;
    isBusy = true;
    void openOrSay(file, page).finally(() => {
      isBusy = false;
    });
  };
  button.addEventListener("click", () => {
    picker.click();
  });
  picker.addEventListener("change", () => {
    const [file] = picker.files ?? [];
    if (file !== undefined) take(file);
    // The same file may be chosen again.
    picker.value = "";
  });
  takeDrops(take);
}
