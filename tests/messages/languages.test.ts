import { globSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { decimalSignOf } from "../../src/core/language.ts";
import { stepStems } from "../../src/core/rounds/stepWords.ts";
import { washingAsides } from "../../src/core/rounds/washingAsides.ts";
import { languages } from "../../src/messages/languages.ts";

const root = new URL("../../", import.meta.url).pathname;

describe.each(languages)("$name", ({ code, name, direction }) => {
	test("is named as web pages name it, and written one way", () => {
		expect(Intl.getCanonicalLocales(code)).toEqual([code]);
		expect(name.trim()).not.toBe("");
		expect(["ltr", "rtl"]).toContain(direction);
	});

	test("counts with the two forms that counted.ts has", () => {
		const rules = new Intl.PluralRules(code);
		const forms = Array.from({ length: 1001 }, (_, count) => rules.select(count));
		expect([...new Set(forms)].sort()).toEqual(["one", "other"]);
	});

	test("has a decimal sign that cells are read with", () => {
		expect([".", ","]).toContain(decimalSignOf(code));
	});

	test("has words by which the steps of a round are known", () => {
		expect(Object.keys(stepStems)).toContain(code);
		expect(Object.keys(washingAsides)).toContain(code);
	});
});

test("no page chooses a language by what the browser prefers", () => {
	const files = globSync("src/**/*.{ts,astro}", { cwd: root });
	expect(files.length).toBeGreaterThan(500);
	const asking = files.filter((file) =>
		/navigator\s*\.\s*languages?\b|Accept-Language/.test(readFileSync(root + file, "utf8")),
	);
	expect(asking).toEqual([]);
});
