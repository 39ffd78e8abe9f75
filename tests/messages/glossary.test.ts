import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { glossary } from "../../src/core/glossary.ts";
import { catalogueOf } from "../../src/messages/catalogueOf.ts";
import { gathered } from "../../src/messages/gathered.ts";
import { translations } from "../../src/messages/languages.ts";
import { TERMS_FILE, termsInLanguages, termsText } from "../../src/messages/termsInLanguages.ts";
import { pending } from "./pendingTerms.ts";

/** How a term is found in the texts of a language, and the words that never take its place. */
interface Words {
	readonly found: string;
	readonly never: readonly string[];
}

const messagesFolder = new URL("../../src/messages/", import.meta.url);
const wordsOf = (language: string): Record<string, Words> =>
	JSON.parse(readFileSync(new URL(`terms/${language}.json`, messagesFolder), "utf8"));

const terms = glossary.map(({ term }) => term);
const english = wordsOf("en");
const messages = [...gathered().keys()];
/** Upper or lower case is one; an apostrophe of either kind, and any space, is the same sign. */
const plain = (text: string) => text.replaceAll("\u2019", "'").replace(/\s/g, " ");
const has = (text: string, pattern: string) => new RegExp(plain(pattern), "iu").test(plain(text));

test("the table of terms is up to date: npm run messages", () => {
	expect(readFileSync(new URL(TERMS_FILE, messagesFolder), "utf8")).toBe(termsText());
	for (const words of Object.values(termsInLanguages())) expect(words).not.toContain("");
});

describe.each(["en", ...translations])("the words of the terms in %s", (language) => {
	const words = wordsOf(language);

	test("stand for every term, in the glossary's order, and find the term itself", () => {
		expect(Object.keys(words)).toEqual(terms);
		for (const [at, term] of (termsInLanguages()[language] ?? []).entries())
			expect([term, has(term, words[terms[at] ?? ""]?.found ?? "")]).toEqual([term, true]);
	});

	test("no term is found in the words that are to stay away", () => {
		for (const [term, { never }] of Object.entries(words))
			expect(never.filter((old) => has(term, old))).toEqual([]);
	});
});

test("in English no old word stands for a term", () => {
	const wrong = terms.flatMap((term) =>
		messages.flatMap((message) =>
			(english[term]?.never ?? []).some((old) => has(message, old)) ? [[term, message]] : [],
		),
	);
	expect(wrong).toEqual([]);
});

/** What a text says of a term in words that are not the accepted ones. */
function wrongIn(language: string): Record<string, string[]> {
	const words = wordsOf(language);
	const catalogue = [...catalogueOf(language)];
	const wrongOf = (term: string) =>
		catalogue.flatMap(([message, translated]) => {
			const { found = "", never = [] } = words[term] ?? {};
			const isMissing = has(message, english[term]?.found ?? "") && !has(translated, found);
			return isMissing || never.some((old) => has(translated, old)) ? [message] : [];
		});
	return Object.fromEntries(
		terms.map((term) => [term, wrongOf(term)] as const).filter(([, wrong]) => wrong.length > 0),
	);
}

test.each(translations)("in %s one word stands for one term", (language) => {
	const waiting = pending[language] ?? {};
	const wrong = wrongIn(language);
	for (const term of terms)
		expect([
			term,
			(wrong[term] ?? []).filter((message) => !waiting[term]?.includes(message)),
		]).toEqual([term, []]);
});
