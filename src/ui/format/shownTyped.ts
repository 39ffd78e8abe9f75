import { decimalSign } from "../../core/language.ts";
import type { ValueKind } from "../../core/values/valueKind.ts";
import { shownChoice } from "./shownChoice.ts";

/** A number with a point, as files and programs write it. */
const POINTED = /^-?\d+\.\d+$/;

/**
 * A typed text for reading: a choice by its word, a number with the decimal sign of the
 * page, whichever sign was typed. The workbook keeps the text; what cannot be read stays
 * as typed.
 *
 * @param sign decimal sign of the page
 * @example in French "0.5" → "0,5"
 */
export function shownTyped(
	text: string,
	kind: ValueKind<unknown> | undefined,
	sign = decimalSign,
): string {
	if (kind?.options) return shownChoice(text, kind.options);
	const isFigure =
		kind?.numeric && POINTED.test(text.trim()) && kind.schema.safeParse(text).success;
	return isFigure ? text.replace(".", sign) : text;
}
