import type { LocalTime } from "../../../core/values/dateTime.ts";
import type { Workbook } from "../../../core/workbook.ts";
import type { Surroundings } from "../../page.ts";

/** What is known where something is to be written down. */
export interface Bench {
	readonly around: Surroundings;
	/** The moment that stands in the fields to begin with. */
	readonly at: LocalTime;
	readonly kit: string | undefined;
	/** Takes the workbook with the new line, and a sentence of what it says. */
	wrote(workbook: Workbook, words: string): void;
}

/** Opens the large fields of one act. */
export type OpenBench = (bench: Bench) => void;
