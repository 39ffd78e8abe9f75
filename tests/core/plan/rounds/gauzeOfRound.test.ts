import { expect, test } from "vitest";
import { gauzeOfRound } from "../../../../src/core/plan/rounds/gauzeOfRound.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";

const items = "item,group,measure\nswab,gauze,piece\ncloth,gauze,piece\nglove,gloves,pair\n";
const gauze = (
	usage: string,
	round = { kits: 2, loads: 1, descalings: 0 },
	files: Record<string, string> = {},
	workers_per_round: string | number = 2,
) =>
	gauzeOfRound(
		readWorkbook(
			unitWith(
				{ workers_per_round },
				{ "items.csv": items, "usage.csv": `item,basis,quantity\n${usage}`, ...files },
			),
		),
		round,
	);

test.each([
	["swab,round,3", 3],
	["swab,kit,2.5\ncloth,load,1", 6],
	["swab,kit,0.4", 1],
	["swab,worker_round,1", 2],
	["swab,descale,4", 0],
	["glove,kit,9", 0],
	["swab,day,9", 0],
	// Two of the three kits of five pieces.
	["swab,piece,1", 10],
])("%s: %i pieces for 2 kits in a load by 2 people", (usage, pieces) => {
	expect(gauze(usage)).toBe(pieces);
});

test("a descaling in the round takes its own; a quantity that cannot be read leaves no number", () => {
	expect(gauze("swab,descale,4", { kits: 1, loads: 1, descalings: 1 })).toBe(4);
	expect(gauze("swab,kit,some")).toBeUndefined();
});

test("where something cannot be read there is no number, unless none of the gauze goes by it; what is thrown away takes none", () => {
	const round = { kits: 2, loads: 1, descalings: 0 };
	const uncounted = { "kinds.csv": "kind,piece,count\nbag set,bag,some" };
	expect(gauze("swab,piece,1\nswab,kit,1", round, uncounted)).toBeUndefined();
	expect(gauze("swab,kit,3\nglove,piece,9", round, uncounted)).toBe(6);
	const thrown = { "treatments.csv": "kind,piece,method,note\nbag set,mask,single_use," };
	expect(gauze("swab,piece,1", round, thrown)).toBe(6);
	expect(gauze("swab,kit,3", round, { "items.csv": `${items}gauze,some,piece` })).toBeUndefined();
	expect(gauze("swab,kit,3", round, {}, "many")).toBeUndefined();
});
