import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { catalogueFiles, catalogueOf } from "../../src/messages/catalogueOf.ts";
import { cataloguesThere } from "../../src/messages/cataloguesThere.ts";
import { filed } from "../../src/messages/filed.ts";
import { gathered } from "../../src/messages/gathered.ts";
import { languages, translations } from "../../src/messages/languages.ts";
import { reviewStateOf } from "../../src/messages/reviewStateOf.ts";

const root = new URL("../../", import.meta.url).pathname;
const placeholders = (text: string) => [...new Set(text.match(/\{\d+\}/g))].sort();
const messages = gathered();

test("messages come from the whole program, each with a folder that is there", () => {
	expect(messages.size).toBeGreaterThan(2000);
	const folders = new Set(messages.values());
	for (const folder of ["components", "core/kits", "io", "pages", "ui/subjects/mixing"])
		expect([...folders]).toContain(folder);
	expect([...folders].filter((folder) => !existsSync(`${root}src/${folder}`))).toEqual([]);
});

/** Translations that leave a value out, or name one that the message does not have. */
const wronglyFilled = (language: string) =>
	[...catalogueOf(language)].filter(
		([message, words]) =>
			words.trim() === "" || placeholders(words).join() !== placeholders(message).join(),
	);

test.each(cataloguesThere().filter((code) => !translations.some((listed) => listed === code)))(
	"what is translated into %s so far has the values of its messages",
	(language) => {
		expect(wronglyFilled(language)).toEqual([]);
	},
);

describe.each(translations)("the catalogue of %s", (language) => {
	const catalogue = catalogueOf(language);

	test("has words for every message", () => {
		expect([...messages.keys()].filter((message) => !catalogue.has(message))).toEqual([]);
	});

	test("has the same values in each translation as the message", () => {
		expect(wronglyFilled(language)).toEqual([]);
	});

	test("stands as npm run messages leaves it: named after the folders, in order, nothing spare", () => {
		const stands = catalogueFiles(language);
		const { files } = filed(messages, stands);
		expect(JSON.stringify(stands)).toBe(
			JSON.stringify(Object.fromEntries(Object.keys(stands).map((file) => [file, files[file]]))),
		);
		expect(Object.keys(stands).sort()).toEqual(Object.keys(files).sort());
	});

	test("is called reviewed only where somebody is named who did it, and says so to programs", () => {
		const reviews = JSON.parse(readFileSync(`${root}src/messages/reviews.json`, "utf8")) as Record<
			string,
			{ state: string; reviewedBy: string | null }
		>;
		expect(reviews[language]?.state).toBe(reviewStateOf(language));
		expect(reviews[language]?.reviewedBy !== null).toBe(reviewStateOf(language) === "reviewed");
	});
});

test("French awaits review; a language of which nothing is written nobody has reviewed", () => {
	expect(["en", "fr", "sw"].map(reviewStateOf)).toEqual([
		"reviewed",
		"awaiting review",
		"not reviewed",
	]);
});

test("every listed language but the first has a folder, whatever else is being translated", () => {
	expect(new Set(languages.map(({ code }) => code)).size).toBe(languages.length);
	expect(translations.filter((code) => !existsSync(`${root}src/messages/${code}`))).toEqual([]);
	expect(cataloguesThere(["sw"])).toEqual([...new Set([...cataloguesThere(), "sw"])].sort());
	expect(() => cataloguesThere(["../core"])).toThrow("no code of a language");
});
