import { describe, expect, test } from "vitest";
import { expectWithin } from "../../../expectWithin.ts";
import { columnOf } from "../../contentOf.ts";
import { codesOf, rowsOf, valueIn } from "../../planCells.ts";
import { planOfStore, type Store } from "../oneItem.ts";

const ITEMS = "item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level";
const products = ["liquid,other,L,5", "powder,other,g,500", "tablets,other,tablet,100"];
const items = (header: string, ...lines: string[]) => ({
	files: { "items.csv": [header, ...lines, ...products].join("\n") },
});

/** What is used of the soap in a week: a number, or why there is none. */
function soap(store: Store): unknown {
	const row = rowsOf(planOfStore(store), "supply-use.csv").find(
		({ item }) => valueIn(item) === "soap",
	);
	return row?.expected?.outcome.ok ? valueIn(row.expected) : codesOf(row?.expected).join();
}

describe("use of the soap, two bars a day", () => {
	test.each<[string, Store, unknown]>([
		["by its line", {}, 14],
		["by its lines together", { usage: ["soap,day,2,", "soap,day,1,"] }, 21],
		["another item's line that cannot be read", { usage: ["soap,day,2,", "brush,day,two,"] }, 14],
		[
			"a line of its own that cannot be read",
			{ usage: ["soap,day,2,", "soap,round,two,"] },
			"bad-cell",
		],
		["a line of no item", { usage: ["soap,day,2,", ",day,1,"] }, "bad-cell"],
		["another item that cannot be read", items(ITEMS, "soap,other,bar,10", "brush,other,,1"), 14],
		["an item without a name", items(ITEMS, "soap,other,bar,10", ",other,bar,1"), "bad-cell"],
		[
			"lines that lack a column",
			{ files: { "usage.csv": "item,quantity,note\nsoap,2," } },
			"bad-cell,missing-column",
		],
		[
			"a list that lacks columns that may be blank",
			items("item,group,measure", "soap,other,bar"),
			14,
		],
		["lines without notes", { files: { "usage.csv": "item,basis,quantity\nsoap,day,2" } }, 14],
		[
			"kits whose pieces nobody can count, where nothing goes by the piece",
			{ files: { "kinds.csv": "kind,piece,count\nbag set,bag,some" } },
			14,
		],
		[
			"the same, where it goes by the piece",
			{
				usage: ["soap,piece,2,"],
				files: { "kinds.csv": "kind,piece,count\nbag set,bag,some" },
			},
			"bad-cell",
		],
	])("%s", (_, store, use) => {
		expect(soap(store)).toBe(use);
	});
});

test("by the kit and by the piece: what each of them takes, together", () => {
	// A kit has five pieces.
	const kits = soap({ usage: ["soap,kit,1,"] }) as number;
	const both = soap({ usage: ["soap,kit,1,", "soap,piece,1,"] }) as number;
	expectWithin(both, 6 * kits, 1e-9, "bars");
});

test.each([
	["bar", 13.5],
	["piece", 14],
])("to prepare for, in %s: %d", (measure, wanted) => {
	const store = { usage: ["soap,kit,1.5,"], ...items(ITEMS, `soap,other,${measure},10`) };
	const [row] = rowsOf(planOfStore(store), "supply-use.csv");
	expect(valueIn(row?.set_aside)).toBe(wanted);
});

test("of a group that of its own items, however much of others goes", () => {
	const gauze = (...usage: string[]) =>
		columnOf(
			planOfStore({
				usage,
				settings: { plan_days: 1 },
				...items(ITEMS, "soap,other,bar,10", "swab,gauze,piece,10", "glove,gloves,pair,10"),
			}),
			"day-plan.csv",
			"gauze_pieces_expected",
		);
	const [alone] = gauze("swab,round,3,");
	expect(alone).toBeGreaterThan(0);
	expect(gauze("swab,round,3,", "glove,round,5,", "soap,round,7,")).toEqual([alone]);
	expect(gauze("swab,round,3,", "swab,round,3,")).toEqual([2 * Number(alone)]);
	expect(gauze("swab,round,3,", "swab,kit,some,")).toEqual([undefined]);
	expect(gauze("swab,round,3,", "glove,round,some,")).toEqual([alone]);
});

test("gauze in parts of pieces is prepared for in whole ones, where all of it is counted so", () => {
	const setAside = (usage: string, ...more: string[]) =>
		columnOf(
			planOfStore({
				usage: [usage],
				settings: { plan_days: 1 },
				...items(ITEMS, "swab,gauze,piece,10", ...more),
			}),
			"day-plan.csv",
			"gauze_pieces_set_aside",
		)[0] as number;
	const whole = setAside("swab,kit,0.3,");
	expect(Number.isInteger(whole)).toBe(true);
	const inParts = setAside("swab,kit,0.3,", "roll,gauze,mL,10");
	expect(Number.isInteger(inParts)).toBe(false);
	expect(whole).toBe(Math.ceil(inParts));
});

test("without a line for any gauze its use is not known", () => {
	const [day] = rowsOf(planOfStore(items(ITEMS, "swab,gauze,piece,10")), "day-plan.csv");
	expect(codesOf(day?.gauze_pieces_expected)).toEqual(["use-not-known"]);
});

// calculations.md: no number is invented to fill a hole. One cell of a gauze's row that could not be
// read left that gauze out of the plan's, and the rest stood as if it were all.
test.each<[string, string, boolean]>([
	["one of the group", "square,gauze,piece,none", false],
	["one of a group that is not known", "square,gaze,piece,10", false],
	["one of another group", "square,gloves,piece,none", true],
	["an item without a name, of another group", ",other,piece,10", true],
])("of a group, beside a row of items that cannot be read: %s", (_what, row, isKnown) => {
	const [gauze] = columnOf(
		planOfStore({
			usage: ["swab,round,3,", "square,round,4,"],
			settings: { plan_days: 1 },
			...items(ITEMS, "swab,gauze,piece,10", row),
		}),
		"day-plan.csv",
		"gauze_pieces_expected",
	);
	expect(gauze !== undefined).toBe(isKnown);
});
