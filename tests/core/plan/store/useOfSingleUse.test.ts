import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { plannedUnit } from "../../../../src/core/plan/plannedUnit.ts";
import { useOfSingleUse } from "../../../../src/core/plan/store/useOfSingleUse.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { expectExample } from "../../expectExample.ts";
import { expectWords } from "../../expectWords.ts";
import { calculationsBehind, numberIn, rowsOf, valueIn as valueOfCell } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

/** Two gloves of a kit are thrown away with it; six births of which ten in a hundred need one. */
const files = {
	"kinds.csv": "kind,piece,count\nbag set,clean gloves,2\nbag set,bag,1",
	"treatments.csv": "kind,piece,method,note\nbag set,clean gloves,single_use,",
};

function useOf(item: string, of: Record<string, string> = files) {
	const planned = plannedUnit(readWorkbook(unitWith({ plan_days: 2 }, of)));
	const { unit, days } = valueIn({ outcome: planned }) ?? expect.fail("no days");
	return useOfSingleUse(unit, item, days);
}

test("a piece for single use goes with each kit used, on its day", () => {
	const use = useOf("clean gloves");
	expect(use && valueIn(use.rates)).toMatchObject({ perKit: [2], perRound: 0 });
	const days = (use && valueIn(use.days)) ?? [];
	expect(days.map(({ kind }) => kind)).toEqual(["after_each_use", "after_each_use"]);
	for (const { kits } of days) expectWithin(kits[0], 0.6, 1e-12, "kits");
	expect(use && [valueIn(use.loads), valueIn(use.descaleEvery)]).toEqual([[], 0]);
});

test("of several kinds only some may have it", () => {
	const kinds = {
		"kinds.csv": "kind,piece,count\nlarge set,clean gloves,2\nsmall set,bag,1",
		"treatments.csv": "kind,piece,method,note\nlarge set,clean gloves,single_use,",
		"kind-use.csv": "kind,uses_per_100_births\nlarge set,5\nsmall set,5",
	};
	const use = useOf("clean gloves", kinds);
	expect(use && valueIn(use.rates)).toMatchObject({ perKit: [2, 0] });
	expect(useOf("bag", kinds)).toBeUndefined();
});

test.each(["bag", "gauze squares"])("%s is no piece for single use", (item) => {
	expect(useOf(item)).toBeUndefined();
});

test("with a line of its own both are used up day by day, as the sum's example says", () => {
	const made = plan(unitWith({ plan_days: 2 }, files));
	const row = rowsOf(made, "order.csv").find(({ item }) => valueOfCell(item) === "clean gloves");
	const [sum] = [...calculationsBehind(row?.run_out_on as never)].filter(
		({ key }) => key === "daily_both_ways",
	);
	if (!sum) expect.fail("no sum of both");
	expectExample(sum);
	expectWords(sum);
});

test("what an order of it must last for is its own wait, however far the store looks ahead", () => {
	const [near, far] = [60, 200].map((stock_horizon_days) => {
		const made = plan(unitWith({ stock_horizon_days }, files));
		return rowsOf(made, "order.csv").find(({ item }) => valueOfCell(item) === "clean gloves");
	});
	expect(numberIn(near, "use_expected")).toBeGreaterThan(1);
	for (const column of ["use_expected", "target_stock"])
		expect(numberIn(far, column), column).toBe(numberIn(near, column));
});

test("no round is safe without it, though no line says that a round uses it", () => {
	const usage = "item,basis,quantity,note\nvinegar,descale,1,";
	const made = plan(unitWith({}, { ...files, "usage.csv": usage }));
	const stops = rowsOf(made, "order.csv").map((row) => [row.item, row.stops].map(valueOfCell));
	expect(Object.fromEntries(stops)).toMatchObject({
		"clean gloves": "safe_rounds",
		vinegar: "descaling",
		liquid: "disinfection",
	});
});

test("the kits of a day follow from their own calculation, as its example says", () => {
	const behind = [...calculationsBehind(useOf("clean gloves")?.days as never)];
	const [own] = behind.filter(({ key }) => key === "kits_used_on_day");
	expect(own).toBeDefined();
	if (!own) return;
	expectExample(own);
	expectWords(own);
});

test("where nobody can read how pieces are treated, none is known to be thrown away", () => {
	const unread = { ...files, "treatments.csv": "kind,piece,method,note\nbag set,bag,hot water," };
	expect(useOf("clean gloves", unread)).toBeUndefined();
});

test("kits used on a day whose births are forecast all go by the forecast", () => {
	const [own] = [...calculationsBehind(useOf("clean gloves")?.days as never)].filter(
		({ key }) => key === "kits_used_on_day",
	);
	const level = { mean: 6, levelShape: 20, daySpread: 0.1 };
	expect(own?.compute({ uses: [0.6, 0.1], level })).toMatchObject({
		forecast: { level, sure: [[0], [0]] },
	});
});
