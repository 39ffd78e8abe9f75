import { advice, type Problem } from "../core/problem.ts";
import { say } from "../core/say.ts";

/** Longest description read, in characters. */
const LONGEST_DESCRIPTION = 1_000_000;
/** Deepest nesting read; the format needs seven levels. */
const DEEPEST_NESTING = 32;

/**
 * Looks at an existing `datapackage.json`.
 *
 * The workbook is read from its CSV files alone, so a strange description is
 * advice and never keeps a workbook from opening.
 */
export function checkDataPackage(file: string, text: string): Problem[] {
	const wrong = complaint(text);
	if (!wrong) return [];
	return [
		advice(
			{ file, line: null, column: "" },
			{
				code: "strange-description",
				received: wrong,
				allowed: say`a Data Package description (JSON with a list of resources)`,
				message: say`${file}: ${wrong}. It is not used; the CSV files are read as they are, and saving writes a new description.`,
			},
		),
	];
}

interface Descriptor {
	readonly resources?: unknown;
	readonly basinbook_format?: unknown;
}

/** Edition of the file format that a description without complaint names; undefined where it names none. */
export function formatOf(text: string): number | undefined {
	const { basinbook_format: format } = JSON.parse(text) as Descriptor;
	return format === undefined ? undefined : Number(format);
}

function complaint(text: string): string | undefined {
	if (text.length > LONGEST_DESCRIPTION) return say`it has ${text.length} characters`;
	if (nesting(text) > DEEPEST_NESTING) return say`it is nested too deeply`;
	let descriptor: unknown;
	try {
		descriptor = JSON.parse(text);
	} catch {
		return say`it is not valid JSON`;
	}
	const { resources, basinbook_format: format = 1 } = (descriptor ?? {}) as Descriptor;
	if (!Array.isArray(resources)) return say`it has no list of resources`;
	const isEdition = Number.isInteger(format) && Number(format) >= 1;
	return isEdition ? undefined : say`its basinbook_format is not a whole number from 1 on`;
}

/** Deepest level of brackets outside quoted text, told before anything is parsed. */
function nesting(text: string): number {
	let level = 0;
	let deepest = 0;
	// A quoted text that never ends goes to the end: looking for its end again and again would take hours.
	for (const [mark] of text.matchAll(/"(?:[^"\\]+|\\.?)*"?|[[\]{}]/gs)) {
		if (mark === "[" || mark === "{") deepest = Math.max(deepest, ++level);
		else if (mark === "]" || mark === "}") level--;
	}
	return deepest;
}
