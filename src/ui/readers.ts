/** What reads files, spreadsheets among them, and puts them to the workbook: one further script, which neither the demo nor a draft needs. */
export { readCopy } from "../io/history/readCopy.ts";
export { readFiles } from "../io/readFiles.ts";
export { isZip, unzip } from "../io/unzip.ts";
export { askBeforeReplacing } from "./files/askBeforeReplacing.ts";
export { openedWorkbook } from "./files/openedWorkbook.ts";
export { readAsking } from "./files/readAsking.ts";
export { readGiven } from "./files/readGiven.ts";
