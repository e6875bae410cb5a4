/** The grid's messages in the page's own look: a quiet line for what happened, a dialog for what needs an answer. */
export interface GridNotices {
  readonly notifyUser: (notification: { readonly text: string }) => void;
  readonly raiseError: (text: string, then?: () => void) => void;
  readonly askConfirmation: (text: string, confirm: () => void, cancel?: () => void) => void;
}

function paragraph(text: string, className = ""): HTMLParagraphElement {
  return Object.assign(document.createElement("p"), { textContent: text, className });
}

export function answerButton(text: string, value: string): HTMLButtonElement {
  return Object.assign(document.createElement("button"), { textContent: text, value, className: "answer" });
}

let asked = 0;

/** Says which of the parts names a dialog and which tells what it is about. */
function nameDialog(dialog: HTMLDialogElement, [name, about]: readonly (HTMLElement | undefined)[]): void {
  asked += 1;
  const link = (attribute: string, part: HTMLElement | undefined): void => {
    if (part === undefined) return;
    part.id = `question-${String(asked)}-${attribute}`;
    dialog.setAttribute(attribute, part.id);
  };
  link("aria-labelledby", name);
  link("aria-describedby", about);
}

/** Puts a question of several parts over the page and calls back with the value of the chosen answer. */
export function openQuestion(
  title: string,
  parts: readonly HTMLElement[],
  answers: readonly HTMLButtonElement[],
  then: (answer: string) => void,
): void {
  const dialog = document.createElement("dialog");
  dialog.className = "question";
  const form = Object.assign(document.createElement("form"), { method: "dialog" });
  const row = document.createElement("div");
  row.className = "answers";
  row.append(...answers);
  const said = [...(title === "" ? [] : [paragraph(title, "question-title")]), ...parts];
  nameDialog(dialog, said);
  form.append(...said, row);
  dialog.append(form);
  dialog.addEventListener("close", () => {
    dialog.remove();
    then(dialog.returnValue);
  });
  document.body.append(dialog);
  dialog.showModal();
}

/** Puts a question in one paragraph over the page. */
export function ask(
  title: string,
  text: string,
  answers: readonly HTMLButtonElement[],
  then: (answer: string) => void,
): void {
  openQuestion(title, [paragraph(text)], answers, then);
}

/** A quiet line that stays until what it gives back is called. */
export function stayingToast(text: string): () => void {
  const note = paragraph(text, "quiet-line");
  note.setAttribute("role", "status");
  document.body.append(note);
  return () => {
    note.remove();
  };
}

/** A quiet line for a while, or until what it gives back is called. */
export function toast(text: string): () => void {
  const remove = stayingToast(text);
  setTimeout(remove, 5000);
  return remove;
}

/**
 * `refusal` gives the log's own words for an entry that a rule refused, where there are some; `isSheetShown`: whether the
 * pane leaves the sheet any room.
 */
export function gridNotices(
  refusal: () => { readonly title: string; readonly message: string } | undefined,
  isSheetShown: () => boolean,
): GridNotices {
  const open = new Set<string>();
  return {
    notifyUser: ({ text }) => {
      if (!text.includes("window is too small")) toast(text);
      // The grid says so of a sheet that is out of sight, too, as when a phone's keyboard comes up.
      else if (isSheetShown())
        toast("The window leaves no room below this sheet’s headings. Make it larger, or turn the device.");
    },
    raiseError: (text, then) => {
      if (open.has(text)) return;
      open.add(text);
      const words = text.includes("data validation rule") ? refusal() : undefined;
      // The grid reports a refused entry before it ends it: a dialog that took the focus from the cell at once would
      // make it try the same entry once more.
      setTimeout(() => {
        ask(words?.title ?? "", words?.message ?? text, [answerButton("OK", "ok")], () => {
          open.delete(text);
          then?.();
        });
      });
    },
    askConfirmation: (text, confirm, cancel) => {
      ask("", text, [answerButton("Yes", "yes"), answerButton("No", "no")], (answer) => {
        if (answer === "yes") confirm();
        else cancel?.();
      });
    },
  };
}
