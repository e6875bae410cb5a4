import { RangeObject } from "../ranges/range-object.ts";
import { WorksheetObject } from "../sheets/worksheet-object.ts";
import { TableObject } from "../tables/table-object.ts";
import type { ObjectFactories } from "./requests.ts";

export const factories: ObjectFactories = {
  range: (requests, finding) => new RangeObject(requests, finding).face,
  worksheet: (requests, finding) => new WorksheetObject(requests, finding).face,
  table: (requests, finding) => new TableObject(requests, finding).face,
};
