import { expect, test } from "vitest";
import { inYear, onceIn, oneNeedIn } from "../../../src/ui/format/onceIn.ts";

const plain = (words: string) => words.replaceAll("\u202f", " ");

test.each([
	[0, "a kit is ready whenever one is needed"],
	[0.0002, "less than one time in a million no kit is ready when needed"],
	[0.001, "about one time in 1 000 000 no kit is ready when needed"],
	[0.714, "about one time in 1 400 no kit is ready when needed"],
	[148.48, "about one time in 6.7 no kit is ready when needed"],
	[620, "about 62 of 100 times no kit is ready when needed"],
	[994, "about 99 of 100 times no kit is ready when needed"],
	[995.1, "no kit is ever ready when needed"],
	[1000, "no kit is ever ready when needed"],
])("%f unmet of 1,000 reads: %s", (unmet, words) => {
	expect(plain(oneNeedIn(unmet))).toBe(words);
});

test.each([
	// 0.7 of 1,000 at 240 uses a year: 0.168 a year.
	[0.7, 240, "about once in 6 years"],
	[1, 400, "about once in 2.5 years"],
	[1, 1000, "about once a year"],
	[0.1, 100.1, "about once in 100 years"],
	[0.1, 99, "more rarely than once in 100 years"],
	[0, 240, "more rarely than once in 100 years"],
	[10, 240, "about 2 times a year"],
	[100, 240, "about 2 times a month"],
	[500, 240, "about 2 times a week"],
	[1000, 3652.5, "about 10 times a day"],
	[1, 0, "never, as no kit is used"],
])("%f of 1,000 at %f uses a year is %s", (unmet, uses, words) => {
	expect(plain(onceIn(unmet, uses))).toBe(words);
});

test("the words never change to a rarer kind when the risk grows", () => {
	const order = ["more rarely", "years", "a year", "a month", "a week", "a day"];
	const place = (words: string) => order.findIndex((part) => words.includes(part));
	let last = 0;
	for (let unmet = 1e-4; unmet <= 1000; unmet *= 1.1) {
		const now = place(onceIn(unmet, 800));
		expect(now).toBeGreaterThanOrEqual(last);
		last = now;
	}
	expect(last).toBe(order.indexOf("a day"));
});

test("a year has 365.25 days", () => {
	expect(inYear(2)).toBe(730.5);
});
