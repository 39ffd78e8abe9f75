import { describe, expect, test } from "vitest";
import type { Method } from "../../../src/core/methods/method.ts";
import { type MethodsOfKits, methodsOfKits } from "../../../src/core/methods/methodsOfKits.ts";

const pieces = [
	{ kind: "Bag kit", piece: "Bag", count: 1 },
	{ kind: "Bag kit", piece: "Mask", count: 2 },
	{ kind: "Suction kit", piece: "Bulb", count: 1 },
];

type Line = readonly [kind: string, piece: string | null, method: Method];

function treated(kinds: readonly string[], lines: readonly Line[], method: Method = "chlorine") {
	const treatments = lines.map(([kind, piece, by]) => ({ kind, piece, method: by }));
	return methodsOfKits.compute({ kinds, pieces, treatments, method }) as MethodsOfKits;
}

describe("which methods a kit goes by", () => {
	test.each<[string, string[], Line[], Method, Method[], Method[]]>([
		[
			"the setting, without a line",
			["Bag kit"],
			[],
			"boiling",
			["boiling", "boiling"],
			["boiling"],
		],
		[
			"each by a line of its own: not by the setting at all",
			["Bag kit"],
			[
				["Bag kit", "Bag", "boiling"],
				["Bag kit", "Mask", "steam"],
			],
			"chlorine",
			["boiling", "steam"],
			["boiling", "steam"],
		],
		[
			"a piece by its own line, before its kind's",
			["Bag kit"],
			[
				["Bag kit", null, "steam"],
				["Bag kit", "Mask", "boiling"],
			],
			"chlorine",
			["steam", "boiling"],
			["boiling", "steam"],
		],
		[
			"a line of another kind says nothing",
			["Bag kit"],
			[["Suction kit", "Bag", "autoclave"]],
			"chlorine",
			["chlorine", "chlorine"],
			["chlorine"],
		],
		[
			"several kinds together",
			["Bag kit", "Suction kit"],
			[["Suction kit", null, "single_use"]],
			"chlorine",
			["chlorine", "chlorine", "single_use"],
			["chlorine", "single_use"],
		],
		[
			"a kind without pieces",
			["Other"],
			[["Other", null, "autoclave"]],
			"steam",
			[],
			["autoclave"],
		],
		["no kind at all: the setting", [], [], "steam", [], ["steam"]],
	])("%s", (_, kinds, lines, method, byPiece, methods) => {
		const of = treated(kinds, lines, method);
		expect(of.pieces.map((piece) => piece.method)).toEqual(byPiece);
		expect(of.methods).toEqual(methods);
	});
});

test("a kind of which no piece is listed goes by its own line or the setting, beside one whose pieces are", () => {
	const own: Line[] = [["Bag kit", null, "steam"]];
	expect(treated(["Bag kit", "Cup kit"], own).methods).toEqual(["chlorine", "steam"]);
	const both: Line[] = [...own, ["Cup kit", null, "boiling"]];
	expect(treated(["Bag kit", "Cup kit"], both).methods).toEqual(["boiling", "steam"]);
	expect(treated(["Bag kit"], both).methods).toEqual(["steam"]);
	expect(treated([], both).methods).toEqual(["chlorine"]);
});
