import path from "node:path";

/** The repository's top folder and the folder that a build fills. */
export const projectFolder = path.dirname(import.meta.dirname);
export const distFolder = path.join(projectFolder, "dist");

/** What one build leaves for the next; it outlives a new installation of the packages. */
export const keptFolder = path.join(projectFolder, ".cache", "build");

/** Where the add-in will be served from; the development address unless BASE_URL says otherwise. */
export function baseUrl(): string {
  const given = process.env["BASE_URL"] ?? "https://localhost:3000";
  const address = new URL(given);
  if (address.protocol !== "https:") {
    throw new Error(`BASE_URL is ${given}: Office loads add-ins over https only`);
  }
  return address.href.replace(/\/$/, "");
}
