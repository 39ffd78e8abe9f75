import { globSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { catalogueOf } from "../../src/messages/catalogueOf.ts";
import { gathered, written } from "../../src/messages/gather.ts";

const folder = new URL("../../src/messages/", import.meta.url).pathname;
const placeholders = (text: string) => [...new Set(text.match(/\{\d+\}/g))].sort();

describe("the English catalogue", () => {
	test("is what the program says: npm run messages brings it up to date", () => {
		expect(readFileSync(`${folder}en.json`, "utf8")).toBe(written(gathered()));
	});
});

describe("the French catalogue", () => {
	const french = catalogueOf("fr");
	const english = Object.keys(gathered());

	test("has every message", () => {
		expect(english.filter((message) => !french.has(message))).toEqual([]);
	});

	test("has no message that nobody says", () => {
		const said = new Set(english);
		expect([...french.keys()].filter((message) => !said.has(message))).toEqual([]);
	});

	test("has words for each, with the same values in them", () => {
		const wrong = [...french].filter(
			([message, words]) =>
				words.trim() === "" || placeholders(words).join() !== placeholders(message).join(),
		);
		expect(wrong).toEqual([]);
	});

	test("has each message in one file", () => {
		const files = globSync("fr/*.json", { cwd: folder });
		const all = files.flatMap((file) =>
			Object.keys(JSON.parse(readFileSync(folder + file, "utf8")) as object),
		);
		expect(all.filter((message, at) => all.indexOf(message) !== at)).toEqual([]);
	});

	test("awaits review, and says so to programs", () => {
		const { fr } = JSON.parse(readFileSync(`${folder}reviews.json`, "utf8")) as {
			fr: { status: string; reviewedBy: string | null };
		};
		expect(fr.reviewedBy).toBeNull();
		expect(fr.status).toContain("awaiting review");
	});
});
