import fc from "fast-check";
import { expect, test } from "vitest";
import { fullWithin, type TakenFor, timesFull } from "../../../src/core/water/timesFull.ts";
import { always } from "../../properties/workbooks.ts";

const whole = (min: number, max: number) => fc.integer({ min, max });

test("what ends where the next begins gives it its place", () => {
	const twice = [
		{ from: 0, to: 10, count: 1 },
		{ from: 10, to: 20, count: 1 },
	];
	expect(timesFull(twice, 1)).toEqual([]);
	expect(timesFull(twice, 0).map(({ from }) => from)).toEqual([0, 10]);
	expect(timesFull([], 0)).toEqual([]);
});

test("a start is where minute after minute there is room, and nowhere else", () => {
	const span = fc
		.record({ from: whole(0, 40), lasts: whole(1, 20), count: whole(1, 3) })
		.map(({ from, lasts, count }): TakenFor => ({ from, to: from + lasts, count }));
	let [room, none] = [0, 0];
	fc.assert(
		fc.property(
			fc.array(span, { maxLength: 12 }),
			whole(0, 6),
			whole(0, 60),
			whole(1, 15),
			(taken, most, start, minutes) => {
				const fullAt = (minute: number) =>
					taken.reduce(
						(sum, { from, to, count }) => (from <= minute && minute < to ? sum + count : sum),
						0,
					) > most;
				const minutesOf = Array.from({ length: minutes }, (_, i) => start + i);
				const found = fullWithin(timesFull(taken, most), start, minutes);
				const first = minutesOf.find(fullAt);
				if (first === undefined) {
					room++;
					expect(found).toBeUndefined();
					return;
				}
				none++;
				// It may have begun before the start, and it is full from there on.
				const began = found ?? Number.NaN;
				expect(began).toBeLessThanOrEqual(first);
				if (first > start) expect(began).toBe(first);
				for (let minute = began; minute <= first; minute++) expect(fullAt(minute)).toBe(true);
			},
		),
		always(500),
	);
	expect(Math.min(room, none)).toBeGreaterThan(100);
});
