import open from "open";

import { build } from "./build.ts";
import { sayFailure } from "./say-failure.ts";
import { portFromEnvironment, serve } from "./serve.ts";

const hasDesktop = (): boolean =>
  process.env["CI"] === undefined &&
  (process.platform !== "linux" ||
    process.env["DISPLAY"] !== undefined ||
    process.env["WAYLAND_DISPLAY"] !== undefined);

await sayFailure(async () => {
  const { address } = await serve(portFromEnvironment());
  await build();
  console.log(`\nThe Bathsheet workbench is at ${address}  (stop it with Ctrl+C)`);
  if (hasDesktop()) await open(address);
});
