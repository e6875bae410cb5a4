import { answerButton, openQuestion } from "./notices.ts";
import { lossesBySheet, whatWasFound } from "./opening-words.ts";
import type { FoundWorkbook } from "./read-file.ts";

function element(tag: "p" | "ul" | "li" | "strong", text: string, className = ""): HTMLElement {
  return Object.assign(document.createElement(tag), { textContent: text, className });
}

function lossList(found: FoundWorkbook): readonly HTMLElement[] {
  if (found.losses.length === 0) return [element("p", "Nothing was found in it that cannot be kept here.")];
  const list = element("ul", "", "losses");
  for (const { sheet, what } of lossesBySheet(found.losses)) {
    const line = element("li", "");
    if (sheet !== "") line.append(element("strong", `${sheet}: `));
    line.append(what);
    list.append(line);
  }
  return [element("p", "What cannot be kept as it is in the file:"), list];
}

/** Says what a file holds and what of it cannot be kept; resolves to true where the person wants it opened. */
export function askToOpen(name: string, found: FoundWorkbook, onScreen: string): Promise<boolean> {
  const change = found.changes.map((sentence) => element("p", sentence));
  return new Promise((resolve) => {
    openQuestion(
      `Open ${name}?`,
      [
        element("p", whatWasFound(found)),
        ...change,
        ...lossList(found),
        element("p", "The file itself stays as it is."),
        element("p", onScreen),
      ],
      [answerButton("Open it", "open"), answerButton("Stay here", "stay")],
      (answer) => {
        resolve(answer === "open");
      },
    );
  });
}
