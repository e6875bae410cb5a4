import { createServer, type RequestListener } from "node:http";
import { createServer as createSecureServer } from "node:https";

import sirv from "sirv";

import { distFolder } from "./project.ts";

interface Certificate {
  readonly key: string | Buffer;
  readonly cert: string | Buffer;
  readonly ca?: string | Buffer;
}

/** The port that PORT names, or 3000. Port 0 lets the system choose one. */
export function portFromEnvironment(): number {
  const given = process.env["PORT"];
  if (given === undefined) return 3000;
  const port = Number(given);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error(`PORT is "${given}": give a whole number from 1 to 65535`);
  }
  return port;
}

/** Excel on the web fetches functions.json and the bundles from another origin. */
function headers(response: { setHeader(name: string, value: string): unknown }): void {
  response.setHeader("Access-Control-Allow-Origin", "*");
  response.setHeader("Cache-Control", "no-cache");
}

/**
 * Serves dist/ on this machine only and resolves to its address. Rejects with a sentence when the
 * port is taken.
 */
export async function serve(
  port: number,
  certificate?: Certificate,
): Promise<{ address: string; close: () => Promise<void> }> {
  const files = sirv(distFolder, { dev: true, gzip: true, setHeaders: headers });
  const listener: RequestListener = (request, response) => {
    files(request, response, () => {
      response.writeHead(404, { "Content-Type": "text/plain" });
      response.end(`There is no ${request.url ?? "such page"} here.`);
    });
  };
  const server = certificate ? createSecureServer(certificate, listener) : createServer(listener);
  await new Promise<void>((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      reject(
        error.code === "EADDRINUSE"
          ? new Error(`Port ${port} is in use by another program. Stop it, or choose another port: PORT=3001 npm start`)
          : error,
      );
    });
    server.listen(port, "localhost", resolve);
  });
  const bound = server.address();
  const chosen = typeof bound === "object" && bound !== null ? bound.port : port;
  return {
    address: `${certificate ? "https" : "http"}://localhost:${chosen}`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => {
          resolve();
        });
      }),
  };
}
