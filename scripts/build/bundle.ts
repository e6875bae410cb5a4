import { type Configuration, rspack, type Stats } from "@rspack/core";

/** Writes the bundles of a configuration, says what they are, and gives the files that were read for them. */
export async function bundle(configuration: Configuration): Promise<readonly string[]> {
  const compiler = rspack(configuration);
  const stats = await new Promise<Stats>((resolve, reject) => {
    compiler.run((error, result) => {
      if (error) reject(error);
      else if (result) resolve(result);
      else reject(new Error("rspack gave neither a result nor an error"));
    });
  });
  await new Promise<void>((resolve, reject) => {
    compiler.close((error) => {
      if (error) reject(error);
      else resolve();
    });
  });
  if (stats.hasErrors()) throw new Error(stats.toString({ all: false, errors: true, errorDetails: true }));
  console.log(stats.toString({ all: false, assets: true, warnings: true, groupAssetsByPath: true }));
  return [...stats.compilation.fileDependencies];
}
