import { expect, test } from "vitest";
import { mergedPlaces } from "../../../src/core/merge/mergedPlaces.ts";
import { noPairs, pair } from "../../../src/core/merge/pairs.ts";
import { tableOf } from "../smallUnit.ts";

/** "a" is ours alone, "B" theirs, "c=" a row of both. */
function ordered(ours: string, theirs: string, partners: readonly (readonly [number, number])[]) {
	const table = (letters: string) => tableOf(["x", ...letters].join("\n"));
	const pairs = noPairs(table(ours), table(theirs));
	for (const [one, other] of partners) pair(pairs, one, other);
	return mergedPlaces(
		pairs,
		(row) => ours[row] ?? "",
		(row) => theirs[row] ?? "",
	)
		.map((at) =>
			at.theirs < 0
				? ours[at.ours]
				: at.ours < 0
					? theirs[at.theirs]?.toUpperCase()
					: `${ours[at.ours]}=`,
		)
		.join(" ");
}

test.each([
	["nothing", "", "", [], ""],
	["ours alone", "ab", "", [], "a b"],
	["theirs alone", "", "ab", [], "A B"],
	["by their texts", "ad", "bc", [], "a B C d"],
	["of one text ours first", "a", "a", [], "a A"],
	["around what both have", "amz", "bmy", [[1, 1]], "a B m= Y z"],
	[
		"rows of both that moved, as they stand in ours",
		"mn",
		"nm",
		[
			[0, 1],
			[1, 0],
		],
		"m= n=",
	],
	[
		"with a row of theirs between those",
		"mn",
		"nxm",
		[
			[0, 2],
			[1, 0],
		],
		"m= n= X",
	],
] as const)("rows of two copies in one order: %s", (_what, ours, theirs, partners, expected) => {
	expect(ordered(ours, theirs, partners)).toBe(expected);
});
