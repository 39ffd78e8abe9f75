import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { safetyTruths } from "../../../../src/core/plan/today/safetyTruths.ts";
import { stopProblems } from "../../../../src/core/plan/today/stopProblems.ts";
import { truthKind } from "../../../../src/core/plan/today/truthKind.ts";
import { advice, nowhere, problem } from "../../../../src/core/problem.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const told = (workbook: Workbook, day = "2027-03-01") =>
	safetyTruths(plan(workbook), readWorkbook(workbook), day);
const kinds = (workbook: Workbook, day?: string) => told(workbook, day).map(({ kind }) => kind);

const used = (kits: string) =>
	[...kits].reduce((text, kit) => `${text}\n2027-03-01 04:10,${kit},used,,`, "at,kit,what,by,note");

const header = "item,lot,quantity,made_on,received_on,arrives_on,expires_on";
const stocked = [
	"gauze squares,G,9000,,2027-02-20,,",
	"clean gloves,C,9000,,2027-02-20,,",
	"vinegar,V,90,,2027-02-20,,",
];
const lots = (...lines: string[]) => ({ "lots.csv": [header, ...stocked, ...lines].join("\n") });
const LOT = "liquid,L1,900,2027-01-10,2027-02-20,,2028-07-10";

/** Enough of everything, counted lately. */
const well = (
	changes: Record<string, string> = {},
	settings: Record<string, string | number> = {},
) =>
	unitWith(
		{ unmet_per_1000_uses: 500, beds: 1, spare_kits: 0, ...settings },
		{ ...lots(LOT), ...changes },
	);

test("where nobody can read how long a kit keeps, none ready is told only of kits that are known not to be", () => {
	const unread = (uses: string) => unitWith({ ready_life_days: "abc" }, { "uses.csv": used(uses) });
	expect(kinds(unread("A"))).not.toContain("none_ready");
	expect(kinds(unread("AB"))).toContain("none_ready");
});

test("no kit ready is told of the day asked for, and comes first", () => {
	const workbook = smallUnit({ "uses.csv": used("AB") });
	expect(kinds(workbook, "2027-02-28")).not.toContain("none_ready");
	expect(told(workbook)[0]).toMatchObject({
		kind: "none_ready",
		problems: [{ weight: "advice", file: "kit-register.csv", received: "0" }],
	});
	expect(kinds(smallUnit({ "uses.csv": used("A") }))).not.toContain("none_ready");
	// Where nothing is recorded nobody knows.
	const register = "kit,kind,status,ready_since,note\nA,bag set,in_service,,";
	expect(kinds(smallUnit({ "kits.csv": register }))).not.toContain("none_ready");
});

test("nothing is told where all is well", () => {
	expect(told(well())).toEqual([]);
});

test.each([
	["a lot with too little", well(lots(LOT.replace("900", "0.1"))), ["lot", "short"]],
	["no lot", well(lots()), ["lot", "short"]],
	["one pot", well({}, { pots: 1, pots_on_stove: 1 }), ["water"]],
	[
		"wet kits that nothing is dosed for",
		well({}, { dose_for_wet_kits: "no", carry_in_ml_per_kit: 20 }),
		["soak"],
	],
	["a room in which water cannot cool to what is wanted", well({}, { room_c: 40 }), ["water"]],
	[
		"pieces that no step keeps long enough at a boil",
		well({}, { method: "boiling", disinfect_boil_minutes: 30 }),
		["step"],
	],
	[
		"pieces that no step keeps long enough in steam",
		well({}, { method: "steam", steam_minutes: 30 }),
		["step"],
	],
	[
		"an order that has not come",
		well({
			"placed.csv":
				"ordered_on,item,packs,expected_on,received_on,packs_received,lot,note\n2027-02-01,vinegar,2,2027-02-20,,,,",
		}),
		["late"],
	],
	["a count of long ago", well(lots(LOT.replace("2027-02-20", "2027-01-11"))), ["count"]],
] as const)("%s is told", (_, workbook, expected) => {
	expect(kinds(workbook)).toEqual(expected);
});

test("what runs out before an order can arrive is told with its day", () => {
	const [, short] = told(well(lots(LOT.replace("900", "0.1"))));
	expect(short?.problems[0]).toMatchObject({
		code: "short-before-order",
		received: "2027-03-01",
		file: "order.csv",
		line: 5,
		column: "order_by",
	});
});

test.each([
	["7.5", ["order-late 2027-02-28"]],
	["7.8", []],
	["10", []],
])(
	"of %s L an order is late from 28 February on, or wanted on 1 or 5 March: told %s",
	(litres, late) => {
		const counted = "day,item,lot,entry,quantity,note\n2027-02-20,vinegar,V,count,90,";
		const store = { ...lots(LOT.replace("900", litres)), "journal.csv": counted };
		const problems = told(well(store)).flatMap((truth) => truth.problems);
		expect(problems.map(({ code, received }) => `${code} ${received}`)).toEqual(late);
	},
);

test.each([
	["nothing more is to be ordered", ["gauze squares,H,900,,,2027-03-09,"], false],
	["nothing is on its way", [], true],
])("stock that fell below its reserve some days ago is late where %s: %s", (_, coming, isLate) => {
	const gauze = ["gauze squares,G,90,,2027-02-20,,", ...coming];
	const store = {
		"lots.csv": [header, ...gauze, ...stocked.slice(1), LOT].join("\n"),
		"journal.csv": "day,item,lot,entry,quantity,note\n2027-02-20,vinegar,V,count,90,",
	};
	expect(kinds(well(store)).includes("late")).toBe(isLate);
});

test("a number that is missing is told", () => {
	expect(kinds(well({}, { births_per_day: "many" }))).toContain("number");
});

test.each([
	["no-kit-ready", "none_ready"],
	["stove-booked-twice", "water"],
	["pots-booked-twice", "water"],
	["no-place-for-water", "water"],
	["cooling-too-long", "water"],
	["heating-over-a-day", "water"],
	["boiled-after-use", "water"],
	["short-soak", "soak"],
	["not-dosed-for-wet-kits", "soak"],
	["no-usable-lot", "lot"],
	["lot-in-use", "lot"],
	["step-lacking", "step"],
	["mixing-not-marked", "step"],
	["too-few-hands", "hands"],
	["hands-overloaded", "hands"],
	["too-few-kits", "kits"],
	["short-before-order", "short"],
	["order-late", "late"],
	["delivery-overdue", "late"],
	["count-too-old", "count"],
	["unknown-column", undefined],
] as const)("%s is told as %s, and stops a round unless it is of the store", (code, kind) => {
	const said = advice(nowhere, { code, received: "", allowed: "", message: "" });
	expect(truthKind(said)).toBe(kind);
	const stops = kind !== undefined && !["short", "late", "count"].includes(kind);
	expect(stopProblems([said])).toEqual(stops ? [said] : []);
	const missing = problem(nowhere, { code: "bad-cell", received: "", allowed: "", message: "" });
	expect([truthKind(missing), stopProblems([missing])]).toEqual(["number", [missing]]);
});

test("what stops a safe round leaves out the store, which stops none today", () => {
	const { problems } = plan(smallUnit(lots("liquid,L1,0.1,2026-01-10,2026-01-20,,2027-07-10")));
	const codes = new Set(stopProblems(problems).map(({ code }) => code));
	expect(codes).toContain("lot-in-use");
	expect(codes).not.toContain("count-too-old");
});
