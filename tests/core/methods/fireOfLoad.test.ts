import { expect, test } from "vitest";
import { fireOfLoad } from "../../../src/core/methods/fireOfLoad.ts";
import { piecesReplaced } from "../../../src/core/methods/piecesReplaced.ts";
import { answerOf, refusalOf } from "../answerOf.ts";
import { wholeProblems } from "../wholeProblems.ts";

const load = { ...fireOfLoad.example.inputs, litres: 10, potLitres: 10 };

test("a pot takes what it holds, and what boils away besides", () => {
	expect(answerOf(fireOfLoad, load)).toMatchObject({ litres: 10, startLitres: 11.2 });
	expect(wholeProblems(refusalOf(fireOfLoad, { ...load, litres: 10.5 }))).toMatchObject([
		{
			...{ code: "pot-too-small", received: "10.5 L", allowed: "at most 10 L" },
			...{ file: "unit.csv", line: null, column: "pot_litres" },
		},
	]);
});

const piece = (name: string, count: number, method: "chlorine" | "single_use") => ({
	...{ kind: "K", piece: name, count, method },
});

test.each([
	["of a kind with several sorts of kit the most", [[2, 3, 1]], [3]],
	["of each kind its own", [[2], [], [1]], [2, 0, 1]],
])("new pieces for a kit used: %s", (_what, counts, perKit) => {
	const kinds = counts.map((ofKind) => ({
		methods: ["chlorine", "single_use"] as const,
		pieces: [
			piece("bulb", 9, "chlorine"),
			piece("bag", 8, "single_use"),
			...ofKind.map((count) => piece("bulb", count, "single_use")),
		],
	}));
	expect(answerOf(piecesReplaced, { item: "bulb", kinds }).perKit).toEqual(perKit);
});
