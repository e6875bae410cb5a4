/** Writes docs/job-schema.json: what a job for `bathsheet log` may say, from the log's description. */
import { writeFile } from "node:fs/promises";
import path from "node:path";

import { jobJsonSchema } from "../src/command-line/job/job-schema.ts";
import { projectFolder } from "./project.ts";

export const jobSchemaFile = path.join(projectFolder, "docs", "job-schema.json");

export const jobSchemaText = (): string => `${JSON.stringify(jobJsonSchema(), undefined, 2)}\n`;

if (process.argv[1] === import.meta.filename) await writeFile(jobSchemaFile, jobSchemaText());
