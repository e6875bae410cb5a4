import type { Host } from "../host/create-host.ts";
import { NotWorkedOut } from "../host/state/shown-values.ts";
import { collectWorkbook } from "./collect-state.ts";
import { download } from "./download.ts";
import { answerButton, ask, stayingToast } from "./notices.ts";
import { writeFile } from "./write-file.ts";

/** How long unfinished cells are waited for. */
const patience = 20_000;

function sleep(ms: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, ms);
  });
}

/** A name that every system takes for a file. */
function fileName(name: string): string {
  const plain = name
    // Systems refuse these in names of files.
    .replace(/[\u0000-\u001f<>:"/\\|?*]/g, " ")
    .replace(/\s+/g, " ")
    .replace(/^[. ]+|[. ]+$/g, "");
  return `${plain === "" ? "Log" : plain}.xlsx`;
}

/** More of a list than a person would read. */
const longestList = 8;

function listWords(lost: readonly string[]): string {
  const shown = lost.slice(0, longestList).map((what) => `• ${what}`);
  const more = lost.length - shown.length;
  return [...shown, ...(more > 0 ? [`• and ${String(more)} more`] : [])].join("\n");
}

function say(title: string, text: string): void {
  ask(title, text, [answerButton("OK", "ok")], () => undefined);
}

/** Offers the workbook as an .xlsx file that goes on working in Excel. */
async function saveCopy(host: Host, name: string): Promise<void> {
  await Promise.race([host.workbook.answers.complete(), sleep(patience)]);
  const breath = (): Promise<void> => sleep(0);
  const { file, lost } = await writeFile(await collectWorkbook(host, breath), breath);
  download(file, fileName(name));
  if (lost.length > 0)
    say(
      "The copy was saved without some things",
      `An .xlsx file cannot hold these as they are here:\n${listWords(lost)}`,
    );
}

let isSaving = false;

/** Saves a copy, or says in words why none was made. While one is being written no other is begun. */
export function offerCopy(host: Host, name: string): void {
  if (isSaving) return;
  isSaving = true;
  const done = stayingToast("Writing the copy…");
  saveCopy(host, name)
    .catch((error: unknown) => {
      if (error instanceof NotWorkedOut)
        say("No copy was saved", `${error.message} Wait until no cell shows #BUSY!, then save again.`);
      else say("No copy was saved", error instanceof Error ? error.message : String(error));
    })
    .finally(() => {
      isSaving = false;
      done();
    });
}
