import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Plan } from "../../src/core/plan/plan.ts";
import { orderOf, planOfStore, type Store } from "../core/plan/oneItem.ts";
import { rowsOf } from "../core/planCells.ts";
import { always } from "./workbooks.ts";

const ROUNDING = 1e-6;
const whole = (min: number, max: number) => fc.integer({ min, max });
const lot = fc
	.tuple(whole(0, 400), fc.option(whole(1, 40)), fc.option(whole(-5, 60)))
	.map(([quantity, arrives, expires]) => ({ quantity, arrives, expires }));
const day = (after: number | null) =>
	after === null ? "-" : new Date(Date.UTC(2027, 2, 1 + after)).toISOString().slice(0, 10);
const line = (
	{
		quantity,
		arrives,
		expires,
	}: { quantity: number; arrives: number | null; expires: number | null },
	i: number,
) => `S${i} ${quantity} - - ${day(arrives)} ${day(expires)}`;

const store = fc.record({
	lots: fc.array(lot, { maxLength: 4 }),
	leadDays: whole(0, 30),
	wastagePct: whole(0, 60),
	packSize: fc.constantFrom(0.25, 1, 7, 10, 144),
	serviceLevel: fc.constantFrom(0.5, 0.8, 0.95, 0.99),
	usage: fc.subarray([
		"soap,day,2,",
		"soap,kit,3,",
		"soap,round,1,",
		"soap,load,0.5,",
		"soap,descale,2,",
	]),
	settings: fc.record({
		births_per_day: whole(0, 30),
		review_days: whole(1, 30),
		stock_horizon_days: fc.constantFrom(7, 30, 90),
		reprocessing: fc.constantFrom("in_rounds", "after_each_use"),
	}),
});
type Drawn = typeof store extends fc.Arbitrary<infer T> ? T : never;
const planOf = ({ lots, ...rest }: Drawn, change: Partial<Store> = {}) =>
	planOfStore({ ...rest, lots: lots.map(line), ...change });
const figures = (made: Plan, ...columns: string[]) => orderOf(made, ...columns) as number[];

describe("an order", () => {
	test("is whole packs for the need, and less than one pack more", () => {
		fc.assert(
			fc.property(store, (drawn) => {
				const [target = 0, usable = 0, onOrder = 0, packs = 0, quantity = 0] = figures(
					planOf(drawn),
					"target_stock",
					"usable",
					"on_order",
					"order_packs",
					"order_quantity",
				);
				const need = Math.max(0, target - usable - onOrder);
				expect(Number.isInteger(packs) && packs >= 0).toBe(true);
				expect(quantity).toBe(packs * drawn.packSize);
				expect(quantity).toBeGreaterThanOrEqual(need - ROUNDING);
				expect(quantity).toBeLessThan(need + drawn.packSize);
			}),
			always(25),
		);
	}, 60_000);

	test("is never raised by more stock", () => {
		fc.assert(
			fc.property(store, lot, (drawn, more) => {
				const [before = 0] = figures(planOf(drawn), "order_packs");
				const [after = 0] = figures(
					planOf({ ...drawn, lots: [...drawn.lots, more] }),
					"order_packs",
				);
				expect(after).toBeLessThanOrEqual(before);
			}),
			always(25),
		);
	}, 60_000);

	test("is never lowered by asking to be surer, by more waste or by a longer wait", () => {
		const harder = fc.constantFrom(
			(drawn: Drawn) => ({ serviceLevel: Math.min(0.9999, drawn.serviceLevel + 0.04) }),
			(drawn: Drawn) => ({ wastagePct: drawn.wastagePct + 10 }),
		);
		fc.assert(
			fc.property(store, harder, (drawn, change) => {
				const [target = 0, packs = 0] = figures(planOf(drawn), "target_stock", "order_packs");
				const [more = 0, morePacks = 0] = figures(
					planOf(drawn, change(drawn)),
					"target_stock",
					"order_packs",
				);
				expect(more).toBeGreaterThanOrEqual(target - ROUNDING);
				expect(morePacks).toBeGreaterThanOrEqual(packs);
				const [waited = 0] = figures(
					planOf(drawn, { leadDays: drawn.leadDays + 3 }),
					"target_stock",
				);
				expect(waited).toBeGreaterThanOrEqual(target - ROUNDING);
			}),
			always(20),
		);
	}, 60_000);

	test("comes before the store runs out, by the days to delivery", () => {
		fc.assert(
			fc.property(store, (drawn) => {
				const [runOut, orderBy] = orderOf(planOf(drawn), "run_out_on", "order_by") as string[];
				if (!runOut) return;
				const wait = (Date.parse(runOut) - Date.parse(String(orderBy))) / 86_400_000;
				expect(wait).toBeGreaterThanOrEqual(drawn.leadDays);
			}),
			always(25),
		);
	}, 60_000);
});

test("over a year, every figure of the store is a number of nought or more", () => {
	fc.assert(
		fc.property(store, (drawn) => {
			const made = planOf(drawn, { settings: { ...drawn.settings, stock_horizon_days: 366 } });
			for (const file of ["order.csv", "stock.csv", "stock-ahead.csv", "costs.csv"])
				for (const row of rowsOf(made, file))
					for (const [column, { outcome }] of Object.entries(row)) {
						if (!outcome.ok) expect(outcome.problems.length).toBeGreaterThan(0);
						else if (typeof outcome.value === "number")
							expect(
								outcome.value >= 0 && Number.isFinite(outcome.value),
								`${file} ${column}`,
							).toBe(true);
						else expect(String(outcome.value)).not.toMatch(/NaN|undefined|Infinity/);
					}
			expect(rowsOf(made, "stock-ahead.csv")).toHaveLength(4 * 52);
		}),
		always(8),
	);
}, 60_000);
