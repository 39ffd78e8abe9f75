import { describe, expect, test } from "vitest";
import { sources } from "../../../../src/core/sources.ts";
import { litreWords, quantityWords } from "../../../../src/ui/format/litreWords.ts";
import { momentLater, momentOf, shownBefore } from "../../../../src/ui/format/moment.ts";
import { shownMinutes } from "../../../../src/ui/format/shownMinutes.ts";
import { pageOf } from "../../../../src/ui/pages.ts";
import { demoWorkbook } from "../../../../src/ui/state/demoWorkbook.ts";
import { type State, Store } from "../../../../src/ui/state/store.ts";
import { disagreements } from "../../../../src/ui/subjects/mixing/disagreements.ts";
import { firstAid } from "../../../../src/ui/subjects/mixing/firstAid.ts";
import {
	type Mix,
	mixesOfFirstDay,
	mixOfDays,
	nameOfProductInUse,
	remarkOn,
	whyNoMix,
} from "../../../../src/ui/subjects/mixing/mix.ts";
import { mixingCautions } from "../../../../src/ui/subjects/mixing/mixingCautions.ts";
import { type MixingRules, mixSteps } from "../../../../src/ui/subjects/mixing/mixSteps.ts";
import { endsFirst, storeOf } from "../../../../src/ui/subjects/mixing/strengthView.ts";
import { wardHeadline } from "../../../../src/ui/subjects/mixing/wardView.ts";
import { boilingRounds } from "../../../../src/ui/subjects/water/boilingRounds.ts";
import { coolingOf } from "../../../../src/ui/subjects/water/coolingOf.ts";
import { smallUnit, unitWith } from "../../../core/smallUnit.ts";

/** Narrow and unbreakable spaces as plain ones. */
const plain = (words: string | undefined) => words?.replace(/\s/g, " ");
const demo = (): State => new Store(demoWorkbook()).state;

describe("amounts in words", () => {
	test.each([
		[4.68, "4.68 L"],
		[5, "5 L"],
		[0.85, "850 mL"],
		[12.824, "12.82 L"],
	])("%d L", (litres, words) => {
		expect(plain(litreWords(litres))).toBe(words);
	});

	test.each([
		[820, "mL", "820 mL"],
		[1480, "mL", "1 480 mL"],
		[40, "g", "40 g"],
		[1, "tablet", "1 tablet"],
		[19, "tablet", "19 tablets"],
	])("%d %s", (quantity, measure, words) => {
		expect(plain(quantityWords(quantity, measure))).toBe(words);
	});

	test.each([
		[45, "45 min"],
		[60, "1 h"],
		[434.99, "7 h 15 min"],
		[120.2, "2 h 1 min"],
	])("%d min, never shorter than it is", (minutes, words) => {
		expect(shownMinutes(minutes)).toBe(words);
	});
});

describe("a moment of the boiling sheet", () => {
	test.each([
		["2027-02-28 20:13", "20:13 the evening before, Sun 28 Feb"],
		["2027-02-28 09:05", "09:05 the day before, Sun 28 Feb"],
		["2027-02-27 20:13", "20:13 on Sat 27 Feb"],
		["2027-03-01 03:13", "03:13 the same day"],
	])("%s, seen from the first of March", (text, words) => {
		const moment = momentOf(text);
		expect(moment && shownBefore(moment, "2027-03-01")).toBe(words);
	});

	test("is no moment where there is no time", () => {
		expect(momentOf("")).toBeUndefined();
		expect(momentOf("2027-03-01")).toBeUndefined();
	});

	test("later, over midnight and the end of a month, part minutes as whole ones", () => {
		expect(momentLater({ date: "2027-02-28", minutes: 1400 }, 60.2)).toEqual({
			date: "2027-03-01",
			minutes: 21,
		});
	});
});

describe("what is mixed", () => {
	const liquid: Mix = {
		product: "bleach",
		lot: "L1",
		litres: 5.5,
		quantity: 820,
		measure: "mL",
		waterLitres: 4.68,
		strengthPct: 0.5048,
		exactLitres: undefined,
		until: "",
	};

	const rules: MixingRules = {
		life: { value: 12, why: "" },
		settle: { value: 30, why: "" },
		water: { value: "tap", why: "" },
		pourAway: { value: "Into the latrine.", why: "" },
	};

	test("a powder's deposit settles, and only the clear liquid is used", () => {
		const powder = { ...liquid, measure: "g", quantity: 40 };
		expect(mixSteps(powder, rules).at(-2)).toMatch(
			/let it settle for 30 minutes, pour off and use only the clear liquid/,
		);
		for (const measure of ["mL", "tablet"])
			expect(mixSteps({ ...liquid, measure }, rules).join(" ")).not.toMatch(/settle/);
	});

	test("first aid has a part for everything that can happen, each with its source", () => {
		expect(firstAid).toHaveLength(7);
		for (const { todo, sources: said } of firstAid) {
			expect(todo.length).toBeGreaterThan(0);
			expect(said.length).toBeGreaterThan(0);
		}
		expect(mixingCautions.join(" ")).toMatch(/two chlorine products in one vessel/);
	});

	test("water first, then the product into it, then the label", () => {
		expect(mixSteps(liquid, rules).map(plain)).toEqual([
			"Measure 4.68 L of cold water into a clean plastic container.",
			"Put 820 mL of bleach, lot L1, into the water and stir gently.",
			"This makes 5.5 L at 0.505 % available chlorine.",
			"Label it at once: chlorine, date, time mixed, discard time (12 hours later at most).",
			"Afterwards: Into the latrine.",
		]);
	});

	test("boiled water is said to be boiled and cooled", () => {
		const boiled: MixingRules = { ...rules, water: { value: "boiled", why: "" } };
		expect(mixSteps(liquid, boiled)[0]).toMatch(/^Measure 4\.68\sL of boiled, cooled water/);
	});

	test.each([
		[{ measure: "g", quantity: 40 }, /Put 40\sg .* stir until it has dissolved\.$/],
		[{ measure: "tablet", quantity: 19 }, /19\stablets .* until they have dissolved\.$/],
		[{ measure: "tablet", quantity: 1 }, /1\stablet .* until it has dissolved\.$/],
		[{ lot: "" }, /of bleach, going by its label, into the water/],
	])("%j", (part, words) => {
		expect(mixSteps({ ...liquid, ...part }, rules)[1]).toMatch(words);
	});

	test("the unit's own preparation stands first, and other sizes are of the same lot", () => {
		const state = demo();
		const mixes = mixesOfFirstDay(state);
		expect(mixes.map(({ litres }) => litres)).toEqual([5.5, 1, 2, 3, 5, 10, 15, 20]);
		expect(new Set(mixes.map(({ lot }) => lot))).toEqual(new Set(["B-0211"]));
		expect(remarkOn(state, mixes[0] as Mix)).toBe("");
		expect(mixOfDays(state)).toHaveLength(7);
	});

	test("without exactly one product in use there is nothing to mix by, and a reason", () => {
		const chlorine = `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
			liquid,liquid,3.5,pct_w_v,,0,,no`;
		const { state } = new Store(smallUnit({ "chlorine.csv": chlorine }));
		expect(nameOfProductInUse(state)).toBe("");
		expect(mixesOfFirstDay(state)).toEqual([]);
		expect(whyNoMix(state)).toMatch(/mark exactly one/);
	});
});

describe("what is boiled", () => {
	test("off the boil and cool follow from lighting by heating, holding and cooling", () => {
		const [first] = boilingRounds(demo());
		expect(first).toMatchObject({
			lightBy: { date: "2027-02-28", minutes: 22 * 60 + 56 },
			offBoil: { date: "2027-03-01", minutes: 71 },
			coolBy: { date: "2027-03-01", minutes: 8 * 60 + 26 },
		});
	});

	test("with a stove that gives no heat there is no time, and the cooling is known all the same", () => {
		const { state } = new Store(unitWith({ heat_kw: 0 }));
		expect(boilingRounds(state)[0]).toMatchObject({ lightBy: undefined, coolBy: undefined });
		expect(coolingOf(state)).toMatchObject({ wantedC: 37, rateFrom: "default" });
	});

	test("a room warmer than the water wanted: the pot is known, the time is not", () => {
		const { state } = new Store(unitWith({ room_c: 40, cooling_per_hour: 0.3 }));
		expect(coolingOf(state)).toMatchObject({
			pot: { roomC: 40, coolingPerHour: 0.3 },
			minutes: undefined,
			rateFrom: "typed",
		});
	});

	test("two readings of the unit's own pot", () => {
		const readings = { cooling_first_c: 90, cooling_second_c: 40, cooling_hours: 1 };
		expect(coolingOf(new Store(unitWith(readings)).state)?.rateFrom).toBe("reading");
	});
});

test("the lot that ends first is the first of those with an end in sight", () => {
	const { curves = [] } = storeOf(demo()) ?? {};
	expect(endsFirst(curves)?.lot).toBe("B-0211");
	expect(endsFirst(curves.map((curve) => ({ ...curve, lastUsableDay: null })))).toBeUndefined();
	expect(endsFirst(curves.slice(1))?.lot).toBe("B-0234");
});

test.each([
	["mixing.csv", "4.67 L of water, then 830 mL of Liquid bleach 3.5 %: 5.5 L"],
	["mixing-days.csv", "Liquid bleach 3.5 %: 830 mL on the first day, 840 mL on the last"],
	["wall-table.csv", "A mixing table for the wall: 3 products, one page each"],
	["strength.csv", "Lot B-0211 ends first: usable until Sat 17 Jul 2027"],
	["product-compare.csv", "Chlorine powder 70 % costs least: 33.15 demo money a quarter"],
	[
		"boiling.csv",
		"Light the stove by 22:56 the evening before, Sun 28 Feb, for Morning on Mon 1 Mar",
	],
	["water.csv", "Fetch 83 L on Mon 1 Mar: 5 containers"],
	["ward-use.csv", undefined],
])("the title of %s says the answer, or there is none yet: %s", async (file, answer) => {
	const on = await pageOf(file)?.load();
	if (!on || "mount" in on) throw new Error(`${file} has no page with a grid`);
	expect(plain(on.headline?.(demo()))).toBe(answer);
});

const WARD = "use,litres_per_day,strength_pct,note\nfloors,20,0.1,\nspills,2,0.5,";

test.each([
	[
		"with the product in rounds",
		{},
		"22 L a day of other solution on the ward: 6 090 mL of liquid over the plan",
	],
	[
		"where rounds mix none",
		{ method: "steam" },
		"22 L a day of other solution on the ward: 6 090 mL of product over the plan",
	],
])("the ward's other solution in a line, %s", (_, settings, words) => {
	const { state } = new Store(unitWith(settings, { "ward-solution.csv": WARD }));
	expect(plain(wardHeadline(state))).toBe(words);
});

test("every source that says others differ has its topic, once", () => {
	const disagreeing = Object.values(sources).filter((source) => "disagreement" in source);
	const topics = disagreements().map(({ source }) => source);
	expect(new Set(topics)).toEqual(new Set(disagreeing));
	expect(topics).toHaveLength(disagreeing.length);
	for (const { topic, settings, here } of disagreements())
		expect(settings.length > 0 || here !== undefined, topic).toBe(true);
});
