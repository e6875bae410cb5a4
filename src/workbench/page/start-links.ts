import { answerButton, ask } from "./notices.ts";

/** Marks the link of the workbook that is open; none where it came from a file. */
export function markOpen(start: "demo" | "empty" | "file"): void {
  document.querySelector(".action[aria-current]")?.removeAttribute("aria-current");
  document.querySelector(`.action[href="?start=${start}"]`)?.setAttribute("aria-current", "page");
}

/** Opening another workbook throws this one away; so the page asks first when something was entered. */
export function guardStartLinks(wasChanged: () => boolean): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('.action[href^="?start="]')) {
    link.addEventListener("click", (event) => {
      if (!wasChanged()) return;
      event.preventDefault();
      const answers = [answerButton("Open it", "open"), answerButton("Stay here", "stay")];
      ask(`Open: ${link.textContent}`, "What you entered in this workbook is not kept.", answers, (answer) => {
        if (answer === "open") location.assign(link.href);
      });
    });
  }
}
