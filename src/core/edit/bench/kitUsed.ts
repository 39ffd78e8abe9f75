import { say } from "../../say.ts";
import { usesSheet } from "../../sheets/uses.ts";
import type { Workbook } from "../../workbook.ts";
import { type LineTexts, lineWritten, type Written } from "./lineWritten.ts";

/** Writes that a kit was used or opened, or that a need found none ready: a line of uses.csv. */
export function kitUsed(workbook: Workbook, texts: LineTexts): Written {
	const isNamed = (texts.kit ?? "").trim() !== "";
	if (texts.what !== "none_ready" && !isNamed)
		return { ok: false, wrong: [{ column: "kit", words: say`Choose the kit.` }] };
	return lineWritten(workbook, usesSheet, texts);
}
