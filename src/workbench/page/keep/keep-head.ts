import { pageElement } from "../page-element.ts";
import { isTrouble, type KeptStatus, keptWords, onThisDevice } from "./kept-words.ts";

/** The log's name and how it stands with it, in the head of the page. */
export class KeepHead {
  private readonly name = pageElement("log-name");
  private readonly kept = pageElement("kept");
  private readonly trouble = pageElement("keep-trouble");
  private readonly words = pageElement("keep-trouble-words");
  private readonly asNew = pageElement("keep-as-new");

  constructor(actions: { readonly onList: () => void; readonly onCopy: () => void; readonly onKeepAsNew: () => void }) {
    this.name.addEventListener("click", actions.onList);
    this.asNew.addEventListener("click", actions.onKeepAsNew);
    for (const id of ["save-copy", "trouble-copy"]) pageElement(id).addEventListener("click", actions.onCopy);
  }

  show(name: string, status: KeptStatus, now: number): void {
    const words = keptWords(status, now);
    const bad = isTrouble(status);
    this.name.textContent = name;
    this.name.setAttribute("aria-label", `${name}: logs on this device`);
    this.sayKept(bad ? "" : words);
    this.kept.hidden = bad;
    // A live region speaks when its words change, so they are not written anew.
    if (this.words.textContent !== (bad ? words : "")) this.words.textContent = bad ? words : "";
    if (this.trouble.hidden === bad) {
      this.trouble.hidden = !bad;
      // The grid has less room, or more.
      window.dispatchEvent(new Event("resize"));
    }
    this.asNew.hidden = status.kind !== "open elsewhere" && status.kind !== "written elsewhere";
  }

  private sayKept(words: string): void {
    const at = words.indexOf(onThisDevice);
    if (at < 0) {
      this.kept.textContent = words;
      return;
    }
    const where = Object.assign(document.createElement("span"), { className: "where", textContent: onThisDevice });
    this.kept.replaceChildren(words.slice(0, at), where, words.slice(at + onThisDevice.length));
  }
}
