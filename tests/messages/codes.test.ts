import { expect, test } from "vitest";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { settings } from "../../src/core/sheets/settings.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { gathered } from "../../src/messages/gathered.ts";

const sheets = [...typedSheets, ...computedSheets];
const columns = [...sheets.map((sheet) => sheet.columns), settings];
/** Every key of a column or setting and every code of a choice that is no ordinary word. */
const codes = new Set(
	columns
		.flatMap((all) =>
			Object.entries(all).flatMap(([key, { value }]) => [key, ...(value.options ?? [])]),
		)
		.filter((code) => /[_\d]/.test(code)),
);

/** What is about files may name them: reading and saving, and handing an order to somebody who adds it up. */
const ABOUT_FILES = /^(io|cli|ui\/files|ui\/subjects\/units)(\/|$)/;
/** The file that a button saves. */
const NAMES_A_FILE = new Set(["Save as month.csv"]);

function codesIn(message: string): string[] {
	const words = message.match(/[a-z\d]+(?:[_-][a-z\d]+)*(?:\.csv)?/g) ?? [];
	return words.filter(
		(word) => codes.has(word) || word.endsWith(".csv") || /[a-z]_[a-z]/.test(word),
	);
}

test("keys and codes are found in a text", () => {
	expect(codes.size).toBeGreaterThan(100);
	expect(codesIn("set reprocessing to after_each_use in unit.csv")).toEqual([
		"after_each_use",
		"unit.csv",
	]);
});

test("no text for people has a key, a code or a file's name, unless it is about files", () => {
	const found = [...gathered()].flatMap(([message, folder]) =>
		ABOUT_FILES.test(folder) || NAMES_A_FILE.has(message)
			? []
			: codesIn(message).map((code) => [folder, code, message]),
	);
	expect(found).toEqual([]);
});
