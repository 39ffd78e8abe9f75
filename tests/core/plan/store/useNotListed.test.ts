import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { codesOf, rowsOf, valueIn } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const usage = (...lines: string[]) => ({
	"usage.csv": ["item,basis,quantity,note", "vinegar,descale,1,", ...lines].join("\n"),
});
/** What the row of the gloves holds: numbers, or why there are none. */
function gloves(made: ReturnType<typeof plan>) {
	const row = rowsOf(made, "supply-use.csv").find(({ item }) => valueIn(item) === "clean gloves");
	return [row?.expected, row?.set_aside].map((cell) =>
		cell?.outcome.ok ? Number(cell.outcome.value) > 0 : cell && codesOf(cell).join(),
	);
}
const advised = (made: ReturnType<typeof plan>) =>
	made.problems.filter(({ code }) => code === "use-not-listed");

test("an item without a line has a dash with its reason, which is said once for all of them", () => {
	const made = plan(smallUnit(usage()));
	expect(gloves(made)).toEqual(["use-not-listed", "use-not-listed"]);
	expect(advised(made)).toMatchObject([{ weight: "advice", file: "usage.csv", column: "item" }]);
	expect(made.made).toBe(true);
	expect(advised(made)[0]?.message).toContain(
		'how much goes of "gauze squares", "clean gloves": what',
	);
});

test.each([
	[5, 'of "cloth 0", "cloth 1", "cloth 2", "cloth 3", "cloth 4": what'],
	[6, 'of "cloth 0", "cloth 1", "cloth 2", "cloth 3", "cloth 4", …: what'],
])("of %d items the first are named, in the order of the store", (count, words) => {
	const items = Array.from({ length: count }, (_, at) => `cloth ${at},other,piece,1,1,7,0,0.95`);
	const header = "item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level";
	const store = [header, "liquid,other,L,5,3,7,10,0.95", "vinegar,other,L,1,1,7,0,0.95", ...items];
	const [said] = advised(plan(smallUnit({ ...usage(), "items.csv": store.join("\n") })));
	expect(said?.message).toContain(words);
});

test("a column that the sheet does not know says nothing of any item", () => {
	const files = { "usage.csv": "item,basis,quantity,note,colour\nvinegar,descale,1,," };
	expect(gloves(plan(smallUnit(files)))).toEqual(["use-not-listed", "use-not-listed"]);
});

test("a line counts, also one that says 0", () => {
	const made = plan(smallUnit(usage("clean gloves,worker_round,2,", "gauze squares,piece,0,")));
	expect(gloves(made)).toEqual([true, true]);
	expect(advised(made)).toEqual([]);
	const gauze = rowsOf(made, "supply-use.csv")[0];
	expect([gauze?.expected, gauze?.set_aside].map((cell) => cell && valueIn(cell))).toEqual([0, 0]);
});

test("a line that cannot be read is told in the place of none, unless it is of another item", () => {
	expect(gloves(plan(smallUnit(usage(",piece,2,"))))).toEqual(["bad-cell", "bad-cell"]);
	expect(gloves(plan(smallUnit(usage("clean gloves,piece,much,"))))).toEqual([
		"bad-cell",
		"bad-cell",
	]);
	expect(gloves(plan(smallUnit(usage("gauze squares,piece,much,"))))).toEqual([
		"use-not-listed",
		"use-not-listed",
	]);
});

test("a piece for single use needs no line", () => {
	const files = {
		...usage("gauze squares,piece,2,"),
		"kinds.csv": "kind,piece,count\nbag set,clean gloves,1",
		"treatments.csv": "kind,piece,method,note\nbag set,clean gloves,single_use,",
	};
	expect(gloves(plan(unitWith({}, files)))).toEqual([true, true]);
});

test("of a product that is not in use none goes, and that is known", () => {
	const rows = rowsOf(plan(smallUnit()), "supply-use.csv");
	const powder = rows.find(({ item }) => valueIn(item) === "powder");
	expect(powder && valueIn(powder.set_aside)).toBe(0);
});
