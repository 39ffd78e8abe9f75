import type { PrintOut } from "./printOut.ts";

/** What can be printed from each sheet, by file; a sheet without an entry prints as it stands. */
export const printOuts: Readonly<Record<string, readonly PrintOut[]>> = {};
