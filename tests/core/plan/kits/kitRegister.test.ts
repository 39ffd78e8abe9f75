import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { codesOf, numberIn, problemCodes, rowsOf, valueIn } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const FILE = "kit-register.csv";
const CHECKS =
	"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note";
const register = (kits: readonly string[], checks: readonly string[] = []) =>
	plan(
		smallUnit({
			"kits.csv": ["kit,kind,status,ready_since,note", ...kits].join("\n"),
			"checks.csv": [CHECKS, ...checks].join("\n"),
		}),
	);

test("every kit of the register, in its order, with how it stands", () => {
	expect(
		contentOf(
			plan(smallUnit()),
			FILE,
			"kit",
			"kind",
			"state",
			"counts",
			"use_next",
			"ready_since",
			"ready_until",
			"reason",
			"recorded",
		),
	).toEqual([
		["A", "bag set", "ready", "yes", 1, "2027-02-27", "2027-03-06", "", "no"],
		["B", "bag set", "ready", "yes", 2, "2027-02-28", "2027-03-07", "", "no"],
		[
			"C",
			"bag set",
			"to_reprocess",
			"yes",
			null,
			"",
			"",
			"not recorded: used, or not yet disinfected",
			"no",
		],
		["D", "bag set", "out_of_service", "no", null, "", "", "torn mask", "no"],
	]);
});

test("the kit disinfected longest ago is used next; only ready kits have a place", () => {
	const made = register(
		[
			"A,bag set,in_service,2027-02-28,",
			"B,bag set,in_service,2027-02-25,",
			"C,bag set,in_service,2027-02-20,",
			"D,bag set,in_service,2027-02-26,",
			"E,bag set,out_of_service,2027-02-24,",
			"F,bag set,in_service,,",
		],
		["2027-02-28 08:00,D,4,yes,,,,,,", "2027-02-27 08:00,F,5,yes,,,,,,"],
	);
	expect(contentOf(made, FILE, "kit", "state", "use_next")).toEqual([
		["A", "ready", 2],
		["B", "ready", 1],
		["C", "to_reprocess", null],
		["D", "incomplete", null],
		["E", "out_of_service", null],
		["F", "to_reprocess", null],
	]);
});

test("a kit that the register calls not ready needs a round, whatever its check, and still counts", () => {
	const made = register(["A,bag set,in_service,,"], ["2027-02-27 9:05,A,5,yes,,,,,,"]);
	expect(contentOf(made, FILE, "state", "counts", "ready_until")).toEqual([
		["to_reprocess", "yes", ""],
	]);
});

test("of kits of the same day the mark decides, not the place in the list", () => {
	const kits = ["C", "A", "B"].map((kit) => `${kit},bag set,in_service,2027-02-27,`);
	expect(columnOf(register(kits), FILE, "use_next")).toEqual([3, 1, 2]);
});

test("the last check is shown with its time", () => {
	const made = register(
		["A,bag set,in_service,2027-02-25,"],
		["2027-02-27 9:05,A,5,yes,,,,,,", "2027-02-26,A,5,yes,,,,,,"],
	);
	expect(contentOf(made, FILE, "last_checked", "ready_since", "missing")).toEqual([
		["2027-02-27 09:05", "2027-02-25", null],
	]);
});

test("no kits, no rows; every kit of the register that counts is in service", () => {
	expect(rowsOf(register([]), FILE)).toEqual([]);
	const made = register(
		["A,bag set,in_service,,", "B,bag set,in_service,,"],
		["2027-02-27,B,4,yes,,,,,,"],
	);
	const counted = columnOf(made, FILE, "counts").filter((counts) => counts === "yes").length;
	expect(numberIn(rowsOf(made, "day-plan.csv")[0], "kits_in_service")).toBe(counted);
});

test("a kit twice in the register is a problem, and the plan is not made from half of it", () => {
	const twice = register(["A,bag set,in_service,,", "A,bag set,in_service,,"]);
	expect([twice.made, new Set(problemCodes(twice, "error"))]).toEqual([
		false,
		new Set(["doubled-row"]),
	]);
});

/** A, B and C are ready by the register, by a round and used; how long a kit keeps cannot be read. */
const unread = (settings: Parameters<typeof unitWith>[0], uses = "2027-02-28 10:00,C,used,,") =>
	plan(unitWith(settings, { "uses.csv": `at,kit,what,by,note\n${uses}` }));

test("where nobody can read how long a kit keeps, what hangs on it has no value and says why", () => {
	const made = unread({ ready_life_days: "abc" });
	expect(
		contentOf(
			made,
			FILE,
			"kit",
			"state",
			"counts",
			"use_next",
			"ready_since",
			"ready_until",
			"recorded",
		),
	).toEqual([
		["A", undefined, "yes", undefined, "2027-02-27", undefined, undefined],
		["B", undefined, "yes", undefined, "2027-02-28", undefined, undefined],
		["C", "to_reprocess", "yes", null, "", "", undefined],
		["D", "out_of_service", "no", null, "", "", undefined],
	]);
	const [a, , c] = rowsOf(made, FILE);
	for (const cell of [a?.state, a?.use_next, a?.ready_until, a?.recorded])
		expect(codesOf(cell)).toEqual(["bad-cell"]);
	expect(valueIn(a?.reason)).toMatch(/"abc" was found/);
	expect(valueIn(c?.reason)).toBe("used");
});

test("without a line of uses or rounds nothing is recorded, however long a kit keeps", () => {
	const made = plan(unitWith({ ready_life_days: "abc" }));
	expect(columnOf(made, FILE, "recorded")).toEqual(["no", "no", "no", "no"]);
});

test("left blank, a kit keeps for the days of the format", () => {
	expect(columnOf(unread({ ready_life_days: "" }), FILE, "ready_until")).toEqual([
		"2027-03-06",
		"2027-03-07",
		"",
		"",
	]);
});

test("a ready kit of which nobody knows how long it keeps takes no other's place", () => {
	const made = plan(
		unitWith(
			{ sterile_life_days: "long" },
			{
				"kinds.csv": "kind,piece,count\nsterile,bag,1\nclean,bag,1",
				"treatments.csv": "kind,piece,method,note\nsterile,bag,autoclave,",
				"kits.csv": `kit,kind,status,ready_since,note
					A,sterile,in_service,2027-02-27,
					B,clean,in_service,2027-02-28,`,
			},
		),
	);
	expect(codesOf(rowsOf(made, FILE)[0]?.use_next)).toEqual(["bad-cell"]);
	expect(valueIn(rowsOf(made, FILE)[1]?.use_next)).toBe(1);
});

test("where nobody can read how pieces are treated kits keep as what is disinfected does", () => {
	const made = plan(
		smallUnit({ "treatments.csv": "kind,piece,method,note\nbag set,bag,hot water," }),
	);
	expect(contentOf(made, FILE, "kit", "state", "ready_until")[0]).toEqual([
		"A",
		"ready",
		"2027-03-06",
	]);
});
