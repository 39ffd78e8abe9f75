import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isTooWeak } from "../../src/core/chlorine/isTooWeak.ts";
import { strengthOfLiquid } from "../../src/core/chlorine/strengthOfLiquid.ts";
import { strengthOfPowder } from "../../src/core/chlorine/strengthOfPowder.ts";
import { valueIn } from "../../src/core/outcome.ts";
import { dosingFor } from "../../src/core/plan/chlorine/dosing.ts";
import { strongLots } from "../../src/core/plan/chlorine/lotPreparation.ts";
import { productFigures } from "../../src/core/plan/chlorine/productFigures.ts";
import { strengthOfLot } from "../../src/core/plan/chlorine/strengthOfLot.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { readWorkbook } from "../../src/core/read/readWorkbook.ts";
import { addDays } from "../../src/core/values/date.ts";
import { answerOf } from "../core/answerOf.ts";
import { columnOf } from "../core/contentOf.ts";
import { unitWith } from "../core/smallUnit.ts";
import { always } from "./workbooks.ts";

const number = (min: number, max: number) =>
	fc.double({ min, max, noNaN: true }).map((x) => Number(x.toFixed(4)));
const grams = number(0.1, 200);
const celsius = number(0, 55);
const days = number(0, 3000);
const factor = number(0, 20);
const more = number(0, 50);

describe("strength never rises", () => {
	const liquid = (gramsPerLitre: number, storeC: number, age: number, fadeFactor: number) =>
		answerOf(strengthOfLiquid, { gramsPerLitre, storeC, days: age, fadeFactor });
	/** Rounding of the last digit is not a rise. */
	const notAbove = (later: number, before: number) =>
		expect(later).toBeLessThanOrEqual(before * (1 + 1e-12));

	test("with age, heat or a larger factor, and is never below 0 or above the label", () => {
		fc.assert(
			fc.property(grams, celsius, days, factor, more, (label, store, age, fade, extra) => {
				const now = liquid(label, store, age, fade);
				expect(now).toBeGreaterThan(0);
				notAbove(now, label);
				notAbove(liquid(label, store, age + extra, fade), now);
				notAbove(liquid(label, Math.min(55, store + extra), age, fade), now);
				notAbove(liquid(label, store, age, fade + extra), now);
			}),
			always(1000),
		);
	});

	test("of a powder, with age or a larger loss", () => {
		fc.assert(
			fc.property(number(0, 1), days, number(0, 50), more, (gramsPerGram, age, loss, extra) => {
				const powder = (d: number, points: number) =>
					answerOf(strengthOfPowder, { gramsPerGram, days: d, lossPointsPerYear: points });
				const now = powder(age, loss);
				expect(now).toBeGreaterThanOrEqual(0);
				notAbove(now, gramsPerGram);
				notAbove(powder(age + extra, loss), now);
				notAbove(powder(age, loss + extra), now);
			}),
			always(500),
		);
	});
});

const FIRST = "2027-03-01";
interface Store {
	readonly form: string;
	readonly strength: number;
	readonly factor: number;
	readonly loss: number;
	readonly store_c: number;
	readonly target: number;
	readonly age: number;
	readonly expires: number | null;
}
const store: fc.Arbitrary<Store> = fc.record({
	form: fc.constantFrom("liquid", "powder"),
	strength: number(1, 15),
	factor: number(0, 10),
	loss: number(0, 5),
	store_c: number(15, 45),
	target: fc.constantFrom(0.1, 0.5, 1, 2, 4),
	age: fc.integer({ min: 0, max: 700 }),
	expires: fc.option(fc.integer({ min: -30, max: 900 })),
});
/** From 20 to 76 %: of a label outside 20 to 80 % nobody knows how strong the powder is (methods.md 2). */
const ofPowder = (strength: number) => (16 + 4 * strength).toFixed(4);
const workbookOf = (of: Store) =>
	unitWith(
		{ store_c: of.store_c, target_strength_pct: of.target },
		{
			"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
			liquid,${of.form},${of.form === "liquid" ? `${of.strength},pct_w_v` : `${ofPowder(of.strength)},pct_w_w`},,${of.factor},${of.loss},yes`,
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			liquid,L,1,${addDays(FIRST, -of.age)},,,${of.expires === null ? "" : addDays(FIRST, of.expires)}`,
		},
	);

test("a lot is strong and in date on its last usable day, and weak or out of date the day after", () => {
	let ended = 0;
	fc.assert(
		fc.property(store, (of) => {
			const workbook = workbookOf(of);
			const read = readWorkbook(workbook);
			const [product] = productFigures(read);
			const [lot] = read.tables.lots.rows;
			if (!product || !lot) throw new Error("there should be a product and a lot");
			const startPct = valueIn(dosingFor(read).startPct) as number;
			const usable = (day: string) =>
				!isTooWeak(strengthOfLot(read, product, lot, day), startPct) &&
				(lot.value.expires_on === null || day <= lot.value.expires_on);
			const offered = (day: string) => strongLots(dosingFor(read), product, day).length === 1;
			const last = String(columnOf(plan(workbook), "strength.csv", "last_usable_day")[0]);
			expect(offered(FIRST)).toBe(usable(FIRST));
			if (last === "not usable") {
				expect(usable(FIRST)).toBe(false);
				return;
			}
			if (last === "more than ten years") {
				expect(usable(addDays(FIRST, 3650))).toBe(true);
				return;
			}
			ended++;
			expect([usable(last), usable(addDays(last, 1))]).toEqual([true, false]);
			expect([offered(last), offered(addDays(last, 1))]).toEqual([true, false]);
		}),
		always(150),
	);
	expect(ended).toBeGreaterThan(50);
});
