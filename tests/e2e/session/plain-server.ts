import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";

import type { Served } from "./workbench-session.ts";

/** The kinds of files that a plain web server knows by their endings. */
const kinds: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".xml": "text/xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
};

/** Gives files out under a folder of its address, as any web server does that was told nothing else. */
export async function servePlainly(folder: string, files: ReadonlyMap<string, Uint8Array>): Promise<Served> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const name = pathname.startsWith(`${folder}/`) ? pathname.slice(folder.length + 1) : undefined;
    const file = name === "" ? "index.html" : name;
    const content = file === undefined ? undefined : files.get(file);
    if (file === undefined || content === undefined) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "Content-Type": kinds[path.extname(file)] ?? "application/octet-stream" }).end(content);
  });
  await new Promise<void>((resolve) => {
    server.listen(0, "localhost", resolve);
  });
  return {
    address: `http://localhost:${String((server.address() as AddressInfo).port)}${folder}`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => {
          resolve();
        });
      }),
  };
}
