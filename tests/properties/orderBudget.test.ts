import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dayWith } from "../../src/core/stock/runsOutWith.ts";
import { stopped } from "../../src/core/stock/stopsWithout.ts";
import { type TakeStep, takeFirst, type WantedItem } from "../../src/core/stock/takeFirst.ts";
import { contentOf } from "../core/contentOf.ts";
import { planOfStore } from "../core/plan/oneItem.ts";
import { always } from "./workbooks.ts";

/** Sums of prices end in another last digit, added up another way. */
const ROUNDING = 1e-9;
const LASTS = 999;

/** Days that more packs never bring forward; LASTS stands for those never reached. */
const days = fc
	.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 7 })
	.map((found) => found.sort((a, b) => a - b).map((day) => (day > 50 ? null : day)));
const price = fc.constantFrom(0, 0.1, 0.35, 1, 2.4, 7, 40_000);
const items = fc
	.array(fc.record({ days, price, stops: fc.constantFrom(...stopped), short: fc.nat(2) }), {
		maxLength: 6,
	})
	.map((drawn) =>
		drawn.map(({ days: outs, price: each, stops, short }, i): WantedItem => {
			const packs = Math.max(0, outs.length - 1 - short);
			return {
				item: `item ${i % 4}${i}`,
				stops,
				price: each,
				packs,
				runsOut: { each: 1, days: outs },
			};
		}),
	);
const money = fc.oneof(
	fc.integer({ min: 0, max: 60 }),
	fc.double({ min: 0, max: 100_000, noNaN: true }),
);

const stepsOf = (of: readonly WantedItem[], has: number | null) =>
	takeFirst.compute({ items: of, money: has }) as TakeStep[];
const takenOf = (steps: readonly TakeStep[], name: string) =>
	steps.reduce((sum, { item, packs, paid }) => sum + (paid && item === name ? packs : 0), 0);
const costOf = (steps: readonly TakeStep[]) =>
	steps.reduce((sum, { cost, paid }) => sum + (paid ? (cost ?? 0) : 0), 0);
function firstOut(of: readonly WantedItem[], steps: readonly TakeStep[]): number {
	const outs = of.map(({ item, runsOut }) =>
		dayWith(runsOut, takenOf(steps, item), runsOut.days.length - 1),
	);
	return Math.min(LASTS, ...outs.map((day) => day ?? LASTS));
}

describe("money shared out over an order", () => {
	test("is never spent beyond what there is, nor on more than can be had", () => {
		fc.assert(
			fc.property(items, money, (of, has) => {
				const steps = stepsOf(of, has);
				expect(costOf(steps)).toBeLessThanOrEqual(has * (1 + ROUNDING));
				for (const { item, packs } of of) {
					const all = steps.filter((step) => step.item === item);
					expect(takenOf(steps, item)).toBeLessThanOrEqual(packs);
					expect(all.reduce((sum, step) => sum + step.packs, 0)).toBe(packs);
				}
			}),
			always(200),
		);
	});

	test("more of it never brings forward the first thing that runs out", () => {
		fc.assert(
			fc.property(items, money, money, (of, has, more) => {
				const before = firstOut(of, stepsOf(of, has));
				expect(firstOut(of, stepsOf(of, has + more))).toBeGreaterThanOrEqual(before);
			}),
			always(300),
		);
	});

	test("takes all that can be had where it pays for it", () => {
		fc.assert(
			fc.property(items, (of) => {
				const all = of.reduce((sum, { price: each, packs }) => sum + (each ?? 0) * packs, 0);
				for (const has of [all, null])
					for (const { item, packs } of of) expect(takenOf(stepsOf(of, has), item)).toBe(packs);
			}),
			always(100),
		);
	});

	test("does not go by the order of the list", () => {
		const mixed = items.chain((of) =>
			fc.tuple(fc.constant(of), fc.shuffledSubarray(of, { minLength: of.length })),
		);
		fc.assert(
			fc.property(mixed, money, ([of, turned], has) => {
				expect(stepsOf(turned, has)).toEqual(stepsOf(of, has));
			}),
			always(100),
		);
	});
});

describe("the order of a store with a budget", () => {
	const line = fc.record({
		price: fc.constantFrom("", "0.5", "3", "12.25"),
		pack: fc.constantFrom(1, 5, 12),
		lead: fc.integer({ min: 0, max: 20 }),
		sent: fc.constantFrom("", "0", "2"),
		needs: fc.constantFrom("", "yes", "no"),
		basis: fc.constantFrom("day", "round", "kit", "descale"),
	});
	const store = fc.array(line, { minLength: 1, maxLength: 4 });
	type Lines = typeof store extends fc.Arbitrary<infer T> ? T : never;
	const planOf = (
		lines: Lines,
		has: number | "",
		turn: (rows: string[]) => string[] = (rows) => rows,
	) => {
		const rows = lines.map(
			({ price: each, pack, lead, sent, needs }, i) =>
				`thing ${i},other,piece,${pack},${each},${lead},0,0.95,${sent},${needs}`,
		);
		const header =
			"item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level,depot_packs,round_needs_it";
		return planOfStore({
			settings: { order_money: has },
			files: {
				"items.csv": [header, ...turn(rows)].join("\n"),
				"usage.csv": [
					"item,basis,quantity,note",
					...turn(lines.map(({ basis }, i) => `thing ${i},${basis},2,`)),
				].join("\n"),
			},
		});
	};

	test("is within it, and row by row at most what is ordered and what the depot sends", () => {
		fc.assert(
			fc.property(store, fc.integer({ min: 0, max: 200 }), (lines, has) => {
				const rows = contentOf(
					planOf(lines, has),
					"order.csv",
					"order_packs",
					"take_packs",
					"take_cost",
				);
				const spent = rows.reduce((sum, [, , cost]) => sum + ((cost as number | null) ?? 0), 0);
				expect(spent).toBeLessThanOrEqual(has * (1 + ROUNDING));
				rows.forEach(([ordered, taken], i) => {
					const { sent, price: each } = lines[i] as Lines[number];
					const most = Math.min(
						ordered as number,
						sent === "" ? Number.POSITIVE_INFINITY : Number(sent),
					);
					if (each === "" && most > 0) expect(taken).toBeUndefined();
					else expect(taken).toBeLessThanOrEqual(most);
				});
			}),
			always(15),
		);
	}, 60_000);

	test("is the order itself without one, and row order decides nothing", () => {
		fc.assert(
			fc.property(store, fc.integer({ min: 0, max: 100 }), (lines, has) => {
				const free = lines.map((each) => ({ ...each, sent: "" as const }));
				for (const [ordered, taken, out, full] of contentOf(
					planOf(free, ""),
					"order.csv",
					"order_packs",
					"take_packs",
					"take_run_out_on",
					"full_run_out_on",
				))
					expect([taken, out]).toEqual([ordered, full]);
				const said = (turn?: (rows: string[]) => string[]) =>
					contentOf(
						planOf(lines, has, turn),
						"take-first.csv",
						"place",
						"item",
						"packs",
						"taken",
						"spent",
					);
				expect(said((rows) => rows.toReversed())).toEqual(said());
			}),
			always(12),
		);
	}, 60_000);
});
