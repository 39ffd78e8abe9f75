import type { Descent } from "../core/merge/descent.ts";
import type { Plan } from "../core/plan/plan.ts";
import type { Workbook } from "../core/workbook.ts";
import { workbookFiles } from "./workbookFiles.ts";
import { zipFiles } from "./zipFiles.ts";

/**
 * The workbook as one zip file: its sheets, its description, and in the folder
 * `plan` the results, where a plan is given. With its descent a further file remembers
 * where it comes from. The same input gives the same bytes.
 * Text comes back from readFiles as it was, but for numbers typed with a decimal
 * comma, which are written with a point, and times such as 7:00, written 07:00.
 */
export function zipWorkbook(workbook: Workbook, plan?: Plan, descent?: Descent): Uint8Array {
	return zipTexts(workbookFiles(workbook, plan, descent));
}

/** Texts, in UTF-8, and files as they are, as one zip. */
export function zipTexts(texts: Readonly<Record<string, string | Uint8Array>>): Uint8Array {
	const encoder = new TextEncoder();
	const files = Object.entries(texts).map(([name, text]) => [
		name,
		typeof text === "string" ? encoder.encode(text) : text,
	]);
	return zipFiles(Object.fromEntries(files));
}
