/** Waits for a pause in the changes, but not for longer than a person could lose. */
const pause = 1000;
const longest = 1500;

/** Calls `act` a second after the last `due`, and at most one and a half seconds after the first. */
export class Pace {
  private readonly act: () => void;
  private first: number | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(act: () => void) {
    this.act = act;
  }

  due(): void {
    const now = performance.now();
    this.first ??= now;
    clearTimeout(this.timer);
    this.timer = setTimeout(
      () => {
        this.now();
      },
      Math.max(0, Math.min(pause, this.first + longest - now)),
    );
  }

  /** Does at once what is due. */
  now(): void {
    if (this.first === undefined) return;
    clearTimeout(this.timer);
    this.first = undefined;
    this.act();
  }
}
