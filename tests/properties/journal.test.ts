import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { booksAfter } from "../../src/core/stock/onHand.ts";
import { project } from "../../src/core/stock/projection.ts";
import { addDays } from "../../src/core/values/date.ts";
import { expectWithin } from "../expectWithin.ts";
import { always } from "./workbooks.ts";

type Kind = "receipt" | "issue" | "loss" | "count";
const quarters = (max: number) => fc.integer({ min: 0, max }).map((quarter) => quarter / 4);
const entry = fc.record({
	entry: fc.constantFrom<Kind>("receipt", "issue", "loss", "count"),
	quantity: quarters(80),
	day: fc.integer({ min: 0, max: 400 }),
});
type Entry = typeof entry extends fc.Arbitrary<infer T> ? T : never;
const entries = fc.array(entry, { maxLength: 30 });

function left(start: number, list: readonly Entry[]) {
	return booksAfter(
		start,
		list.map(({ day, ...each }) => ({ ...each, day: addDays("2026-01-01", day) })),
	);
}
const sumOf = (list: readonly Entry[], kind: Kind) =>
	list.reduce((sum, { entry: other, quantity }) => sum + (other === kind ? quantity : 0), 0);
const gone = (list: readonly Entry[]) => sumOf(list, "issue") + sumOf(list, "loss");

describe("whatever is entered into the journal", () => {
	test("stock is never below nought, and short only by what went out", () => {
		fc.assert(
			fc.property(quarters(200), entries, (start, list) => {
				const { quantity, short } = left(start, list);
				expect(quantity).toBeGreaterThanOrEqual(0);
				expect(short).toBeGreaterThanOrEqual(0);
				expect(short).toBeLessThanOrEqual(gone(list));
			}),
			always(500),
		);
	});

	test("without counts: start + receipts − issues − losses + what went out beyond the books", () => {
		const uncounted = entries.map((list) => list.filter((each) => each.entry !== "count"));
		fc.assert(
			fc.property(quarters(200), uncounted, (start, list) => {
				const { quantity, short, counted, lastCount } = left(start, list);
				expect(quantity).toBe(start + sumOf(list, "receipt") - gone(list) + short);
				expect([counted, lastCount]).toEqual([0, undefined]);
			}),
			always(500),
		);
	});

	test("where no more is issued than is there: start + receipts − issues + what counts found", () => {
		fc.assert(
			fc.property(entries, (list) => {
				// Enough that no issue can go beyond, unless a count has found less.
				const issues = gone(list);
				const counts = list.map((each) =>
					each.entry === "count" ? { ...each, quantity: each.quantity + issues } : each,
				);
				const { quantity, short, counted } = left(issues, counts);
				expect(short).toBe(0);
				expect(quantity).toBe(issues + sumOf(counts, "receipt") - issues + counted);
			}),
			always(500),
		);
	});

	test("a count is the last word: what came before it does not matter", () => {
		fc.assert(
			fc.property(quarters(200), entries, quarters(80), entries, (start, list, found, later) => {
				const count: Entry = { entry: "count", quantity: found, day: 401 };
				const moved = later.map((each) => ({ ...each, day: each.day + 402 }));
				const whole = left(start, [...list, count, ...moved]);
				const fresh = left(found, moved);
				expect([whole.quantity, whole.short]).toEqual([fresh.quantity, fresh.short]);
			}),
			always(300),
		);
	});

	test("lines may stand in any order where the days differ", () => {
		const differing = fc.uniqueArray(entry, { maxLength: 20, selector: ({ day }) => day });
		fc.assert(
			fc.property(quarters(200), differing, fc.integer(), (start, list, turn) => {
				const at = list.length === 0 ? 0 : Math.abs(turn) % list.length;
				const turned = [...list.slice(at), ...list.slice(0, at)].reverse();
				const { lastCount, ...figures } = left(start, list);
				const { lastCount: last, ...other } = left(start, turned);
				expect(other).toEqual(figures);
				expect(last).toEqual(lastCount);
			}),
			always(300),
		);
	});
});

test("looking ahead, nothing appears or vanishes: lots = use covered + waste + what is left", () => {
	const lot = fc.record({
		quantity: quarters(200),
		from: fc.integer({ min: -3, max: 30 }),
		last: fc.oneof(fc.integer({ min: -3, max: 40 }), fc.constant(Number.POSITIVE_INFINITY)),
	});
	fc.assert(
		fc.property(
			fc.array(lot, { maxLength: 6 }),
			fc.array(quarters(40), { minLength: 45, maxLength: 60 }),
			(lots, demand) => {
				const { stock, waste, runOut } = project(
					lots.map((each, i) => ({ ...each, name: `${i}`, ends: "out of date", perUnit: () => 1 })),
					demand,
				);
				const all = lots.reduce((sum, { quantity }) => sum + quantity, 0);
				const wasted = waste.reduce((sum, { quantity }) => sum + quantity, 0);
				const asked = demand.reduce((sum, units) => sum + units, 0);
				const left = stock.at(-1) as number;
				const used = all - wasted - left;
				expect(used).toBeGreaterThanOrEqual(-1e-9);
				expect(used).toBeLessThanOrEqual(asked + 1e-9);
				if (runOut === null) expectWithin(used, asked, 1e-9, "pieces");
				else {
					expect(used).toBeLessThan(asked);
					expectWithin(stock[runOut], 0, 1e-9, "pieces");
				}
				for (const { day, lot: name } of waste)
					expect(day).toBe(Math.max(0, (lots[Number(name)]?.last as number) + 1));
			},
		),
		always(500),
	);
});
