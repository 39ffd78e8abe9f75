import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { problemCodes } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const kinds = (never: string) => `kind,piece,count,never_by
	bag set,bag,1,${never}
	bag set,valve,2,
	bag set,mask,2,`;
const treatments = (...lines: string[]) => ["kind,piece,method,note", ...lines].join("\n");

test.each<[string, string, string[], string[]]>([
	["nothing forbidden", "", [], []],
	["forbidden, and not done", "boiling steam", [], []],
	["forbidden, and the setting does it", "chlorine", [], ["method-forbidden"]],
	[
		"forbidden, and its own line does it",
		"boiling",
		["bag set,bag,boiling,"],
		["method-forbidden"],
	],
	[
		"forbidden, and the kind's line does it",
		"boiling",
		["bag set,,boiling,"],
		["method-forbidden"],
	],
	[
		"forbidden by the setting's method, and its own line spares it",
		"chlorine",
		["bag set,bag,boiling,"],
		[],
	],
	["a kind that is not listed", "", ["bag sett,,boiling,"], ["unknown-piece"]],
	["a piece whose line has another bad cell", "perhaps", ["bag set,bag,boiling,"], ["bad-cell"]],
	["a piece that is not listed", "", ["bag set,hose,boiling,"], ["unknown-piece"]],
	[
		"for single use, and no item of the store",
		"",
		["bag set,mask,single_use,"],
		["single-use-not-listed"],
	],
])("%s", (_what, never, lines, codes) => {
	const made = plan(
		unitWith({}, { "kinds.csv": kinds(never), "treatments.csv": treatments(...lines) }),
	);
	expect(problemCodes(made, "error")).toEqual(codes);
});

const wrong = (treated: string, files: Record<string, string> = {}) =>
	plan(unitWith({}, { "kinds.csv": kinds(""), "treatments.csv": treatments(treated), ...files }))
		.problems.filter(({ code }) => /piece|listed|forbidden|twice/.test(code))
		.map(({ file, line, column, code, received, message }) => [
			`${file} ${line} ${column}`,
			code,
			received,
			message.split(",")[0],
		]);

test("each is named where it stands", () => {
	expect(wrong("bag sett,,boiling,")).toEqual([
		[
			"treatments.csv 2 kind",
			"unknown-piece",
			"bag sett",
			'No piece of the kind "bag sett" is listed',
		],
	]);
	expect(wrong("bag set,hose,boiling,")).toEqual([
		[
			"treatments.csv 2 piece",
			"unknown-piece",
			"bag set, hose",
			'The kind "bag set" has no piece "hose"',
		],
	]);
	const short = (...asked: Parameters<typeof wrong>) =>
		wrong(...asked).map((each) => each.slice(0, 3));
	expect(short("bag set,mask,single_use,")).toEqual([
		["items.csv null item", "single-use-not-listed", "no item of this name"],
	]);
	const files = {
		"items.csv": "item,group,measure\nmask,other,piece",
		"usage.csv": "item,basis,quantity\nmask,round,1\nmask,piece,2\nmask,kit,3\nsoap,kit,1",
	};
	expect(short("bag set,mask,single_use,", files)).toEqual([
		["usage.csv 3 basis", "counted-twice", "piece"],
		["usage.csv 4 basis", "counted-twice", "kit"],
	]);
});

test("what the maker of one kind's piece forbids is nothing to the same piece of another kind", () => {
	const both = `kind,piece,count,never_by
		bag set,mask,1,chlorine
		other set,mask,1,`;
	const kits = "kit,kind,status\nA,bag set,in_service\nB,other set,in_service";
	const lines = (treated: string) =>
		wrong(treated, { "kinds.csv": both, "kits.csv": kits }).map(([place]) => place);
	expect(lines("other set,mask,boiling,")).toEqual(["kinds.csv 2 never_by"]);
	expect(lines("bag set,mask,boiling,")).toEqual([]);
});

test("a piece for single use that a line of its own counts too is counted twice, and that is said", () => {
	const made = plan(
		unitWith(
			{},
			{
				"treatments.csv": treatments("bag set,mask,single_use,"),
				"items.csv": [
					"item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level",
					"mask,other,piece,1,,7,0,0.95",
					"liquid,other,L,1,,7,0,0.95",
				].join("\n"),
				"usage.csv": "item,basis,quantity,note\nmask,kit,2,",
			},
		),
	);
	expect(problemCodes(made, "error")).toEqual([]);
	expect(problemCodes(made, "advice")).toContain("counted-twice");
});

test.each([
	["boiling", "short-boil"],
	["steam", "short-steam"],
])("by %s, no step long enough is advice", (method, code) => {
	const steps = (minutes: number) => `step,basis,minutes,hands_on,method
		wash rinse dry,kit,50,yes,
		hold,load,${minutes},no,${method}`;
	const codes = (minutes: number) =>
		problemCodes(plan(unitWith({ method }, { "steps.csv": steps(minutes) })), "advice");
	expect(codes(19)).toContain(code);
	expect(codes(20)).not.toContain(code);
	expect(codes(19)).not.toContain("short-soak");
	const words = plan(unitWith({ method }, { "steps.csv": steps(19) })).problems.find(
		(problem) => problem.code === code,
	)?.message;
	expect(words).toContain(method === "boiling" ? "at a rolling boil" : "in steam");
});
