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
  form.append(...(title === "" ? [] : [paragraph(title, "question-title")]), ...parts, row);
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
  const note = paragraph(text, "toast");
  note.setAttribute("role", "status");
  document.body.append(note);
  return () => {
    note.remove();
  };
}

function toast(text: string): void {
  setTimeout(stayingToast(text), 5000);
}

/** `refusal` gives the log's own words for an entry that a rule refused, where there are some. */
export function gridNotices(
  refusal: () => { readonly title: string; readonly message: string } | undefined,
): GridNotices {
  return {
    notifyUser: ({ text }) => {
      toast(text);
    },
    raiseError: (text, then) => {
      const words = text.includes("data validation rule") ? refusal() : undefined;
      ask(words?.title ?? "", words?.message ?? text, [answerButton("OK", "ok")], () => then?.());
    },
    askConfirmation: (text, confirm, cancel) => {
      ask("", text, [answerButton("Yes", "yes"), answerButton("No", "no")], (answer) => {
        if (answer === "yes") confirm();
        else cancel?.();
      });
    },
  };
}
