import { describe, expect, test } from "vitest";
import {
	beginEntries,
	filledEntries,
	methodEntry,
} from "../../../src/core/edit/begin/beginEntries.ts";
import { type BeginEntry, isAsked, isGiven } from "../../../src/core/edit/begin/beginEntry.ts";
import { kinds } from "../../../src/core/edit/begin/kindEntry.ts";
import { stepsEntry, stepsFor } from "../../../src/core/edit/begin/stepsEntry.ts";
import { emptyWorkbook, isEmpty } from "../../../src/core/edit/emptyWorkbook.ts";
import { usualEntries } from "../../../src/core/edit/trial/trialEntries.ts";
import { settings } from "../../../src/core/sheets/settings.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";
import { begun, entered, entryOf } from "./begun.ts";

const entries: ReadonlyMap<string, BeginEntry> = new Map(
	[...filledEntries, methodEntry, ...usualEntries, ...beginEntries].map((each) => [each.key, each]),
);
const field = (key: string) => {
	const entry = entries.get(key);
	if (!entry) throw new Error(`no entry ${key}`);
	return entry;
};

/** Of the small unit: the unit beside a field, what it allows, and what stands in it. */
test.each([
	["plan_start", "", /^a date/, "2027-03-01"],
	["births_per_day", "births/day", /^a number from 0 to 500$/, "6"],
	["delivery_beds", "beds", /^a whole number from 0/, ""],
	["kits", "kits", /^a whole number from 1 to 100$/, "3"],
	["rounds", "h:min", /^clock times from 00:00/, "07:00 14:00 21:00"],
	["steps", "", /^the steps proposed/, "4 steps are listed"],
	["pots", "pots", /^a whole number from 1/, "20"],
	["product-kind", "", /^one of the list$/, "liquid pct_w_v"],
	["strength", "% (g in 100 mL)", /^a number from/, "3.5"],
	["in-store", "L", /^a quantity from 0 on/, "20"],
	["every-birth", "", /^yes or no$/, "no"],
	["births-every-day", "births", /^a number from 0 to 500/, ""],
	["method", "", /^one of: chlorine/, ""],
] as const)("the field %s: %s, %s", (key, unit, allowed, text) => {
	const own = smallUnit();
	expect([field(key).unit(own), field(key).read(own)]).toEqual([unit, text]);
	expect(field(key).allowed(own)).toMatch(allowed);
	expect(field(key).read(emptyWorkbook())).toBe(key === "every-birth" ? "no" : "");
	expect(isGiven(field(key), emptyWorkbook())).toBe(key === "every-birth");
});

test("a text that is not understood is none given", () => {
	expect(isGiven(entryOf("pots"), unitWith({ pots: "some" }))).toBe(false);
	expect(isGiven(entryOf("pots"), unitWith({ pots: 3 }))).toBe(true);
});

test("a default holds where a setting has one, and what may be chosen is listed", () => {
	expect(entryOf("pots").defaultOf).toBe(settings.pots);
	expect(entryOf("births_per_day")).not.toHaveProperty("defaultOf");
	expect(field("every-birth").options).toEqual([
		["no", "no"],
		["yes", "yes"],
	]);
	expect(entryOf("product-kind").options).toEqual(kinds.map(([value, words]) => [value, words]));
	const every = field("every-birth");
	const own = smallUnit();
	expect(every.write(own, "no")).toBe(own);
});

test.each([
	["chlorine", {}, "", true],
	["boiling", {}, "", false],
	["boiling", { wipe_solution_litres: 0 }, "bag set,,steam", false],
	["boiling", {}, "bag set,bag,steam\nbag set,mask,chlorine", true],
	["boiling", { wipe_solution_litres: 2 }, "", true],
	["some way", {}, "", true],
] as const)("by %s with %o and %s the product is asked for: %s", (method, more, lines, asked) => {
	const unit = unitWith(
		{ wipe_solution_litres: 0, ...more, method },
		{ "treatments.csv": `kind,piece,method\n${lines}` },
	);
	for (const key of ["product-kind", "strength", "in-store"])
		expect(isAsked(entryOf(key), unit)).toBe(asked);
	expect(isAsked(entryOf("pots"), unit)).toBe(true);
});

describe("the product in use", () => {
	const PRODUCTS = "product,form,strength,strength_measure,in_use";
	const product = (line: string, files: Record<string, string> = {}) =>
		smallUnit({ "chlorine.csv": `${PRODUCTS}\n${line}`, ...files });

	test.each(kinds)("by its kind %s has its words and its unit", (value, _words, unit) => {
		const [form, measure] = value.split(" ");
		const own = product(`own,${form},3,${measure},yes`);
		expect(entryOf("product-kind").read(own)).toBe(value);
		expect(entryOf("strength").unit(own)).toBe(unit);
		const written = entered(begun(), "product-kind", value);
		expect(entryOf("product-kind").read(written)).toBe(value);
		expect(written.tables["items.csv"]?.rows.at(-1)?.slice(0, 3)).toEqual(
			{
				liquid: ["Liquid bleach", "", "mL"],
				powder: ["Chlorine powder", "", "g"],
				tablet: ["Chlorine tablets", "", "tablet"],
			}[form ?? ""],
		);
	});

	test("has a strength in the unit of its kind", () => {
		expect(kinds.map(([, , unit]) => unit)).toEqual([
			"% (g in 100 mL)",
			"% (g in 100 mL)",
			"degrees",
			"g/L",
			"%",
			"g/tablet",
		]);
	});

	test("is the one that says so, else the first; of a kind that is not in the list nothing is known", () => {
		const two = (first: string, second: string) =>
			product(`a,powder,70,pct_w_w,${first}\n b ,tablet,1.5,g_per_tablet,${second}`);
		expect(entryOf("strength").read(two("no", "YES"))).toBe("1.5");
		expect(entryOf("strength").read(two("no", "no"))).toBe("70");
		const odd = product("a,bar,70,pct_w_w,yes");
		expect(entryOf("product-kind").read(odd)).toBe("bar pct_w_w");
		expect([entryOf("strength").unit(odd), entryOf("in-store").unit(odd)]).toEqual(["", ""]);
		expect(entryOf("product-kind").write(odd, "bar pct_w_w")).toBe(odd);
		const unread = product("a,powder,70,by weight,yes");
		expect(entryOf("product-kind").read(unread)).toBe("powder by weight");
		expect(entryOf("product-kind").write(unread, "powder by weight")).toBe(unread);
		const nameless = product(",powder,70,pct_w_w,yes");
		expect(entryOf("in-store").write(nameless, "5")).toContain("kind");
		expect(entryOf("strength").write(nameless, "5")).toContain("kind");
		expect(entryOf("product-kind").write(odd, "stick pct_w_w")).toContain("kind");
		expect(entryOf("product-kind").write(product(""), "")).toContain("kind");
	});

	test("a quantity is in the measure of its item; tablets are tablets", () => {
		const items = "item,group,measure\nown,other,kg\ntabs,other,tablet";
		const unitOf = (line: string) =>
			entryOf("in-store").unit(product(line, { "items.csv": items }));
		expect(unitOf("own,powder,70,pct_w_w,yes")).toBe("kg");
		expect(unitOf("tabs,tablet,1.5,g_per_tablet,yes")).toBe("tablets");
		expect(unitOf("new,powder,70,pct_w_w,yes")).toBe("g");
		expect(unitOf("new,liquid,3.5,pct_w_v,yes")).toBe("mL");
	});
});

describe("the steps of a round", () => {
	const STEPS = "step,basis,minutes,hands_on,method";
	const steps = (...lines: string[]) =>
		unitWith({}, { "steps.csv": [STEPS, ...lines].join("\n"), "usage.csv": "item,basis,quantity" });

	test("are counted where something stands in a line", () => {
		expect(stepsEntry.read(steps())).toBe("");
		expect(stepsEntry.read(steps(",,,,"))).toBe("");
		expect(stepsEntry.read(steps("soak,load,,,"))).toBe("1 step is listed");
		expect(stepsEntry.read(steps(",,20,,", " , ,,,", "soak,,,,"))).toBe("2 steps are listed");
	});

	test("are listed without what they use, where only they are taken", () => {
		const own = entered(steps(), "steps", "typed");
		expect(own.tables["usage.csv"]?.rows).toEqual([]);
		expect(own.tables["steps.csv"]?.rows.map((row) => row[4])).toContain("");
		expect(own.tables["steps.csv"]?.rows.map((row) => row[4])).toContain("chlorine");
	});

	test.each(["method", "soak_minutes", "disinfect_boil_minutes", "steam_minutes"])(
		"are not proposed while %s cannot be read, and why is said",
		(key) => {
			const unit = unitWith({ [key]: "some" }, { "steps.csv": STEPS });
			const proposed = stepsFor(unit);
			expect(proposed.ok ? [] : proposed.problems.map(({ received }) => received)).toEqual([
				"some",
			]);
			expect(stepsEntry.write(unit, "taken")).toContain("some");
		},
	);
});

test("a workbook with keys of settings alone is empty; one with a space is, one with a text is not", () => {
	const only = (file: string, header: string[], row: string[]) => ({
		tables: { [file]: { header, rows: [row] } },
	});
	expect(isEmpty(only("unit.csv", ["value", "key"], [" ", "pots"]))).toBe(true);
	expect(isEmpty(only("unit.csv", ["value", "key"], ["3", "pots"]))).toBe(false);
	expect(isEmpty(only("kits.csv", ["key", "kit"], ["A", ""]))).toBe(false);
	expect(emptyWorkbook().tables["unit.csv"]?.rows[0]).toHaveLength(2);
});
