import { expect, test } from "vitest";
import { marksReader } from "../../../src/core/record/marksReader.ts";

const marksIn = marksReader(["K1", "Kit 2", "Kit", "K10", "É3"]);

test("the longest mark counts, wherever it stands in the register", () => {
	const known = ["Kit", "Kit 2", "Kit 2 b"];
	for (const order of [known, known.toReversed()])
		expect(marksReader(order)("kit 2 b, kit 2 kit")).toEqual({
			marks: ["Kit 2 b", "Kit 2", "Kit"],
			unknown: [],
		});
});

test.each([
	["K1 Kit 2, K3", ["K1", "Kit 2"], ["K3"]],
	["", [], []],
	["  , ;", [], []],
	[" ,K1;k10 ", ["K1", "K10"], []],
	["kit 2 KIT kit2", ["Kit 2", "Kit"], ["kit2"]],
	["K1 k1;K1", ["K1"], []],
	["K11,K1", ["K1"], ["K11"]],
	["é3", ["É3"], []],
	["lost lost", [], ["lost", "lost"]],
	["Kit 22", ["Kit"], ["22"]],
])("“%s”", (text, marks, unknown) => {
	expect(marksIn(text)).toEqual({ marks, unknown });
});
