import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";

const onLinux = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
const onMac = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];
const onWindows = ["Google\\Chrome\\Application\\chrome.exe", "Microsoft\\Edge\\Application\\msedge.exe"];

function candidates(): string[] {
  const folders = (process.env["PATH"] ?? "").split(path.delimiter);
  if (process.platform === "darwin") return onMac;
  if (process.platform === "win32") {
    const roots = ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"]
      .map((name) => process.env[name])
      .filter((root) => root !== undefined);
    return roots.flatMap((root) => onWindows.map((browser) => path.join(root, browser)));
  }
  return folders.flatMap((folder) => onLinux.map((browser) => path.join(folder, browser)));
}

/** The program file of a Chrome, Chromium or Edge on this machine: BROWSER_PATH, else the usual places. */
function findBrowser(): string | undefined {
  const given = process.env["BROWSER_PATH"];
  if (given !== undefined) {
    if (!existsSync(given)) throw new Error(`BROWSER_PATH is ${given}, and there is no such file`);
    return given;
  }
  return candidates().find((file) => existsSync(file));
}

const isDebianAsRoot = (): boolean =>
  process.platform === "linux" && existsSync("/etc/debian_version") && process.getuid?.() === 0;

/**
 * As findBrowser, but installs Debian's chromium where that needs no question to anyone (Debian, as
 * root). Throws with a sentence on how to get a browser where there is none.
 */
export function ensureBrowser(): string {
  const found = findBrowser();
  if (found !== undefined) return found;
  if (isDebianAsRoot()) {
    console.log("No browser found: installing Debian's chromium for the browser tests.");
    execFileSync("apt-get", ["update", "-qq"], { stdio: "inherit" });
    execFileSync("apt-get", ["install", "-y", "-qq", "chromium"], { stdio: ["ignore", "ignore", "inherit"] });
    const installed = findBrowser();
    if (installed !== undefined) return installed;
  }
  throw new Error(
    "The browser tests need Chrome, Chromium or Edge and found none. Install one (on Debian or Ubuntu: " +
      "sudo apt-get install chromium), or set BROWSER_PATH to the program file of one you have.",
  );
}

/** Flags under which a headless Chromium runs in a container and asks nothing of the network. */
export const headlessFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
