import open from "open";
import { build } from "./build.ts";
import { portFromEnvironment, serve } from "./serve.ts";

const hasDesktop = (): boolean =>
  process.env["CI"] === undefined &&
  (process.platform !== "linux" || process.env["DISPLAY"] !== undefined || process.env["WAYLAND_DISPLAY"] !== undefined);

try {
  const port = portFromEnvironment();
  await build();
  const { address } = await serve(port);
  console.log(`\nThe Bathsheet workbench is at ${address}  (stop it with Ctrl+C)`);
  if (hasDesktop()) await open(address);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
