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
});
