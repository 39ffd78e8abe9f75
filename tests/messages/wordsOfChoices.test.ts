import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { settings } from "../../src/core/sheets/settings.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { choice, codeOf } from "../../src/core/values/choice.ts";
import { WORDS_FILE, wordsOfChoices, wordsText } from "../../src/messages/wordsOfChoices.ts";

const lists = [...typedSheets.map((sheet) => sheet.columns), settings].flatMap((columns) =>
	Object.values(columns).flatMap(({ value }): (readonly string[])[] =>
		value.options ? [value.options] : [],
	),
);

test("the table of words is up to date: npm run messages", () => {
	const file = new URL(`../../src/messages/${WORDS_FILE}`, import.meta.url);
	expect(readFileSync(file, "utf8")).toBe(wordsText());
});

describe("what a page shows for a choice is read where the code is", () => {
	test("every word of every list, in every language, means its own code only", () => {
		const words = wordsOfChoices();
		expect(lists.length).toBeGreaterThan(10);
		for (const options of lists)
			for (const code of options)
				for (const word of [code, ...(words[code] ?? [])])
					expect([word, codeOf(` ${word.toUpperCase()} `, options)]).toEqual([word, code]);
	});

	test.each([
		["in service", "in_service"],
		["En service", "in_service"],
		["hors\u00a0service", "out_of_service"],
	])("%s is %s", (text, code) => {
		const kind = choice(["in_service", "out_of_service"]);
		expect(kind.schema.safeParse(text)).toMatchObject({ success: true, data: code });
	});

	test.each(["", "service", "in servise", "constructor", "oui"])("“%s” is not", (text) => {
		expect(codeOf(text, ["in_service", "out_of_service"])).toBeUndefined();
	});
});
