import { helper } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { at, blankIf, where } from "./formulas.ts";

/**
 * What left the shelf, day by day. A concentrate's issue of a day stands on one of its rows only, so
 * that the median of the days can be picked by ranks, without array formulas.
 */
export const additionIssues: readonly ComputedColumn[] = [
  helper({ id: "concentrate", label: "Concentrate", type: "text", width: 12, help: "Of the bath, where it is concentrate that was added." },
    (r) => blankIf([`${r.here("bathRow")}=""`, `${r.here("kind")}<>"concentrate"`, `NOT(ISNUMBER(${r.here("when")}))`], `${at(r, "baths", "concentrate", r.here("bathRow"))}&""`)),
  helper({ id: "day", label: "Day", type: "date", width: 11, help: "Day of the issue from the shelf." },
    (r) => blankIf([`${r.here("concentrate")}=""`], `INT(${r.here("when")})`)),
  helper({ id: "issueKey", label: "Concentrate and day", type: "text", width: 14, help: "By which the first row of a day is found." },
    (r) => blankIf([`${r.here("concentrate")}=""`], `${r.here("concentrate")}&"|"&${r.here("day")}`)),
  helper({ id: "dayIssue", label: "Issued that day", type: "number", format: "0.000", width: 9, help: "All of the concentrate that day, on one of its rows." },
    (r) => blankIf([`${r.here("issueKey")}=""`],
      `IF(MATCH(${r.here("issueKey")},${r.all("additions", "issueKey")},0)<>ROW(${r.here("issueKey")})-ROW(${r.header("additions", "issueKey")}),"",SUMIFS(${r.all("additions", "amount")},${where([
        [r.all("additions", "issueKey"), r.here("issueKey")],
      ])}))`)),
  helper({ id: "daysBelow", label: "Days below", type: "whole number", format: "0", width: 8, help: "Days on which less of this concentrate was issued: gives the median." },
    (r) => blankIf([`${r.here("dayIssue")}=""`],
      `COUNTIFS(${where([
        [r.all("additions", "concentrate"), r.here("concentrate")],
        [r.all("additions", "dayIssue"), `"<"&${r.here("dayIssue")}`],
      ])})`)),
];
