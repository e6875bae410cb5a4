import { answerButton, ask } from "../notices.ts";
import { timeWords } from "./kept-words.ts";
import type { KeptLog, LogStore } from "./log-store.ts";

interface Means {
  readonly store: LogStore;
  /** The id of the log that is open. */
  readonly open: () => string;
  readonly now: () => number;
  readonly onOpen: (id: string) => void;
  readonly onStart: (fresh: "demo" | "empty") => void;
  readonly onRenamed: (id: string, name: string) => void;
  readonly onRemoved: (id: string) => void;
}

function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  properties: Partial<HTMLElementTagNameMap[Tag]>,
  ...children: readonly Node[]
): HTMLElementTagNameMap[Tag] {
  const made = Object.assign(document.createElement(tag), properties);
  made.append(...children);
  return made;
}

function button(text: string, label: string, act: () => void): HTMLButtonElement {
  const made = element("button", { type: "button", textContent: text, className: "answer" });
  made.setAttribute("aria-label", label);
  made.addEventListener("click", act);
  return made;
}

/** The list of the logs that are kept on this device, over the page. */
class LogList {
  private readonly means: Means;
  private readonly dialog = element("dialog", { className: "question logs" });
  private readonly list = element("ul", { className: "log-list" });
  private readonly trouble = element("p", { className: "log-trouble" });

  constructor(means: Means) {
    this.means = means;
    this.dialog.setAttribute("aria-labelledby", "log-list-title");
    this.trouble.setAttribute("role", "alert");
    const close = element("button", { type: "button", textContent: "Close", className: "answer" });
    close.addEventListener("click", () => {
      this.dialog.close();
    });
    this.dialog.append(
      element("h2", { id: "log-list-title", className: "question-title", textContent: "Logs on this device" }),
      element("p", {
        textContent:
          "They are kept in this browser only. Clearing its data for this page takes them away, and a private window forgets them when it is closed: save a copy of what must last.",
      }),
      this.list,
      this.trouble,
      element(
        "div",
        { className: "log-start" },
        this.start("empty", "New log"),
        this.start("demo", "New demo week"),
        close,
      ),
    );
    this.dialog.addEventListener("close", () => {
      this.dialog.remove();
    });
  }

  private start(fresh: "demo" | "empty", text: string): HTMLButtonElement {
    return button(text, text, () => {
      this.means.onStart(fresh);
    });
  }

  async show(): Promise<void> {
    await this.fill();
    document.body.append(this.dialog);
    this.dialog.showModal();
  }

  private async attempt(work: () => Promise<void>): Promise<void> {
    try {
      this.trouble.textContent = "";
      await work();
    } catch (error) {
      this.trouble.textContent = `That could not be done: ${error instanceof Error ? error.message : "the browser's storage refused."}`;
    }
  }

  private async fill(): Promise<void> {
    await this.attempt(async () => {
      const logs = await this.means.store.list();
      const rows = logs.map((log) => this.row(log));
      this.list.replaceChildren(
        ...(rows.length > 0
          ? rows
          : [element("li", { textContent: "None yet. A log is kept as soon as you enter something." })]),
      );
    });
  }

  private row(log: KeptLog): HTMLLIElement {
    const isOpen = log.id === this.means.open();
    const changed = `changed ${timeWords(log.changed, this.means.now())}`;
    return element(
      "li",
      {},
      element("span", { className: "log-name", textContent: log.name }),
      element("span", { className: "log-changed", textContent: isOpen ? `open here, ${changed}` : changed }),
      ...(isOpen
        ? []
        : [
            button("Open", `Open ${log.name}`, () => {
              this.means.onOpen(log.id);
            }),
          ]),
      button("Rename", `Rename ${log.name}`, () => {
        this.rename(log);
      }),
      button("Delete", `Delete ${log.name}`, () => {
        this.remove(log);
      }),
    );
  }

  private rename(log: KeptLog): void {
    const field = element("input", { value: log.name, maxLength: 80, required: true });
    field.setAttribute("aria-label", `New name of ${log.name}`);
    const form = element(
      "form",
      { className: "log-rename" },
      field,
      element("button", { type: "submit", textContent: "Save name", className: "answer" }),
    );
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const name = field.value.trim();
      if (name === "") return;
      void this.attempt(async () => {
        await this.means.store.rename(log.id, name);
        this.means.onRenamed(log.id, name);
        await this.fill();
      });
    });
    this.list
      .querySelector(`[aria-label="${CSS.escape(`Rename ${log.name}`)}"]`)
      ?.closest("li")
      ?.replaceChildren(form);
    field.select();
  }

  private remove(log: KeptLog): void {
    const answers = [answerButton("Delete it", "delete"), answerButton("Keep it", "keep")];
    ask(
      `Delete “${log.name}” from this device?`,
      "What was entered in it is gone, unless you saved a copy.",
      answers,
      (answer) => {
        if (answer !== "delete") return;
        void this.attempt(async () => {
          await this.means.store.remove(log.id);
          this.means.onRemoved(log.id);
          await this.fill();
        });
      },
    );
  }
}

export function showLogList(means: Means): void {
  void new LogList(means).show();
}
