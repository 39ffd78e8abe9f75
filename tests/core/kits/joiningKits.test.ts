import { expect, test } from "vitest";
import { AgesOfKits } from "../../../src/core/kits/agesOfKits.ts";
import { JoiningKits } from "../../../src/core/kits/joiningKits.ts";
import { LaterEnds, sureNone } from "../../../src/core/kits/laterEnds.ts";
import { expectWithin } from "../../expectWithin.ts";

const KITS = 3;
const ENDS = 4;
const chances = (...of: number[]) => {
	const all = sureNone(KITS);
	all.set(of);
	return all;
};
/** One ends tomorrow at even odds, one the day after at one in four, two on the last day for sure. */
const later = () =>
	new LaterEnds(KITS, [chances(1), chances(0.5, 0.5), chances(0.75, 0.25), chances(0, 0, 1)]);

interface Joined {
	/** How likely 0, 1, … are to join. */
	readonly row: readonly number[];
	/** Of those left [end, count, chance]. */
	readonly left: readonly (readonly number[])[];
}

function joined(endsBy: number, spreadBy: number, of: readonly number[][], days = later()): Joined {
	const joining = new JoiningKits(KITS, days);
	const step = { uses: 0, endsBy, spreadBy, target: 3, midnight: "none" } as const;
	const ages = new AgesOfKits(KITS, ENDS);
	for (const [end = 0, count = 0, chance = 0] of of) ages.add(end, count, chance);
	const [row, after] = [new Float64Array(KITS + 1).fill(9), new AgesOfKits(KITS, ENDS)];
	joining.begin(step);
	joining.join(step, ages, KITS, 0.5, row, after);
	joining.end(step, after);
	const left = [0, 1, 2, 3].flatMap((end) =>
		[1, 2, 3].flatMap((n) => {
			const chance = after.of(end)[n] as number;
			return chance === 0 ? [] : [[end, n, chance]];
		}),
	);
	return { row: [...row], left: after.none > 0 ? [[-1, 0, after.none], ...left] : left };
}

// What is left is weighed by a half.
test.each<[string, number, number, number[][], Joined]>([
	["none that ends later joins", 0, -1, [[1, 2, 1]], { row: [1, 0, 0, 0], left: [[1, 2, 0.5]] }],
	[
		"the one that ends today does; of two others the next end as they may",
		0,
		-1,
		[[0, 1, 1]],
		{ row: [0, 1, 0, 0], left: [[3, 2, 0.5]] },
	],
	["all of them", 0, -1, [[0, 3, 1]], { row: [0, 0, 0, 1], left: [[-1, 0, 0.5]] }],
	["also by a later day", 1, -1, [[0, 3, 1]], { row: [0, 0, 0, 1], left: [[-1, 0, 0.5]] }],
	[
		"one that is left where two or more would be ends on the latest day",
		1,
		-1,
		[[0, 2, 1]],
		{ row: [0, 0, 1, 0], left: [[3, 1, 0.5]] },
	],
	[
		"of two that end together soon one does",
		-1,
		1,
		[[1, 2, 1]],
		{ row: [0, 1, 0, 0], left: [[1, 1, 0.5]] },
	],
	["one alone does not", -1, 1, [[1, 1, 1]], { row: [1, 0, 0, 0], left: [[1, 1, 0.5]] }],
	[
		"two that are left end together too, and one of them joins",
		0,
		3,
		[[0, 1, 1]],
		{ row: [0, 0, 1, 0], left: [[3, 1, 0.5]] },
	],
])("%s", (_what, endsBy, spreadBy, of, { row, left }) => {
	expect(joined(endsBy, spreadBy, of)).toEqual({ row, left });
});

test("where more are left than days to come ever hold, they join on the latest of those", () => {
	const one = new LaterEnds(KITS, [chances(1), chances(0.5, 0.5), chances(1), chances(1)]);
	expect(joined(1, -1, [[0, 1, 1]], one)).toEqual({ row: [0, 0, 0, 1], left: [[-1, 0, 0.5]] });
});

test("where nothing is known of later days, none joins that does not end", () => {
	const none = new LaterEnds(KITS, [chances(1), chances(1), chances(1), chances(1)]);
	expect(joined(-1, 0, [[2, 1, 1]], none)).toEqual({ row: [1, 0, 0, 0], left: [[2, 1, 0.5]] });
});

test("of those left some end by the next day too, as likely as they may", () => {
	// Three kits, of which one ends today: the others end on the last day both, for sure.
	expect(joined(1, -1, [[0, 1, 1]])).toEqual({ row: [0, 1, 0, 0], left: [[3, 2, 0.5]] });
	const wide = new LaterEnds(KITS, [
		chances(1),
		chances(0.5, 0.25, 0.25),
		chances(0.25, 0.5, 0.25),
		chances(1),
	]);
	const joining = new JoiningKits(KITS, wide);
	const step = { uses: 0, endsBy: 1, spreadBy: 2, target: 3, midnight: "none" } as const;
	const ages = new AgesOfKits(KITS, ENDS);
	ages.add(0, 1, 1);
	const [row, after] = [new Float64Array(KITS + 1), new AgesOfKits(KITS, ENDS)];
	joining.begin(step);
	joining.join(step, ages, KITS, 1, row, after);
	joining.end(step, after);
	// Of two: 0 and 2 with 0.5 × 0.25, 1 and 1 with 0.25 × 0.5, 2 and 0 with 0.25 × 0.25, of 0.3125
	// altogether; two that are left end together, and one of them joins.
	const of = (chance: number) => chance / 0.3125;
	const wanted = [0, 0, of(0.125 + 0.125), of(0.0625)];
	wanted.forEach((chance, x) => {
		expectWithin(row[x] as number, chance, 1e-12, "chance");
	});
	expectWithin(after.of(2)[1] as number, of(0.25), 1e-12, "chance");
	expectWithin(after.none, of(0.0625), 1e-12, "chance");
});
