import { say } from "../../core/say.ts";

/** Between clauses that are put in a row; other languages space it otherwise. */
export const semicolon = say`; `;
