import { describe, expect, test } from "vitest";
import { derive } from "../../../src/core/calculation.ts";
import {
	dailyUse,
	type Horizon,
	horizon,
	preparationsAhead,
} from "../../../src/core/plan/store/horizon.ts";
import { useOfItem } from "../../../src/core/plan/store/useOfItem.ts";
import { type UnitFigures, unitFigures } from "../../../src/core/plan/unitFigures.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { useExpected } from "../../../src/core/stock/useSetAside.ts";
import { expectWithin } from "../../expectWithin.ts";
import { valueIn } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

const start = "2027-03-01";
function look(
	settings: Record<string, string | number>,
	files: Record<string, string> = {},
): { unit: UnitFigures; ahead: Horizon } {
	const unit = unitFigures(readWorkbook(unitWith(settings, files)), start, "2027-03-07");
	return { unit, ahead: horizon(unit, start) };
}
const slow = (leadDays: number) => ({
	"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
		soap,other,bar,10,5,${leadDays},0,0.95`,
});

describe("how far the store looks ahead", () => {
	test.each([
		["half a year, unless said otherwise", {}, slow(7), 182],
		["a week", { stock_horizon_days: 7 }, slow(0), 7],
		["a year", { stock_horizon_days: 366 }, slow(7), 366],
		["as far as the slowest order", { stock_horizon_days: 7, review_days: 30 }, slow(100), 130],
		["a part of a day is a day", { stock_horizon_days: 7, review_days: 7 }, slow(20.5), 28],
		["the slowest of all", { stock_horizon_days: 7, review_days: 366 }, slow(366), 732],
	])("%s", (_what, settings, files, days) => {
		const { ahead } = look(settings, files);
		expect(ahead.days).toHaveLength(days);
		expect(ahead.days[0]?.date).toBe(start);
	});

	test("the days follow the calendar into the next year", () => {
		const { ahead } = look({ stock_horizon_days: 366 });
		expect(ahead.days.at(-1)?.date).toBe("2028-02-29");
		expect(new Set(ahead.days.map((day) => day.date)).size).toBe(366);
	});
});

describe("what the days bring", () => {
	test("a day's own figure where there is one, births a day on the others", () => {
		const { ahead } = look({}, { "births.csv": "date,births,note\n2027-03-02,9,\n2027-08-01,2," });
		const births = (date: string) => valueIn(ahead.days.find((day) => day.date === date)?.births);
		expect(["2027-03-01", "2027-03-02", "2027-08-01", "2027-08-02"].map(births)).toEqual([
			6, 9, 2, 6,
		]);
	});

	test("as many days of rounds as asked for", () => {
		const { ahead } = look({});
		for (const days of [1, 14, 182]) expect(valueIn(ahead.rounds(days))).toHaveLength(days);
	});

	test("use of the days adds up to the use over them", () => {
		const { unit, ahead } = look({ descale_every_rounds: 3 });
		for (const item of ["gauze squares", "clean gloves", "vinegar"]) {
			const use = useOfItem(unit, item, ahead.rounds(60));
			const daily = valueIn(derive(dailyUse, use)) as number[];
			const over = valueIn(derive(useExpected, use)) as number;
			expect(over).toBeGreaterThan(0);
			expect(daily).toHaveLength(60);
			expectWithin(
				daily.reduce((sum, day) => sum + day, 0),
				over,
				1e-9,
				item,
			);
		}
	});

	test("preparations of a steady day: the chance that each of its rounds runs, added up", () => {
		const { ahead } = look({ ready_life_days: 90 });
		const preparations = valueIn(preparationsAhead(ahead)) as number[];
		// 0.6 uses a day; rounds at 07:00, 14:00 and 21:00 collect 10, 7 and 7 hours of them.
		const expected = [10, 7, 7].reduce((sum, hours) => sum - Math.expm1((-0.6 * hours) / 24), 0);
		expect(preparations).toHaveLength(182);
		for (const day of preparations) expectWithin(day, expected, 1e-9, "preparations");
	});
});
