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

test.each([
	["İ1,K2", ["İ1", "K2"]],
	["i1;k2 İ1", ["İ1", "K2"]],
	["K2 İ1", ["K2", "İ1"]],
])("a Turkish capital İ is one letter: “%s”", (text, marks) => {
	expect(marksReader(["İ1", "K2"])(text)).toEqual({ marks, unknown: [] });
});

test("of marks that differ by small letters only, each is found as it is written", () => {
	expect(marksReader(["kit 1", "Kit 1"])("Kit 1, kit 1").marks).toEqual(["Kit 1", "kit 1"]);
});

/** Beyond them no letter is small or capital. */
const PLACES = 0x20000;

test("in small letters, in which marks are compared, no other letter is longer or shorter", () => {
	const changed: string[] = [];
	for (let place = 0; place < PLACES; place++) {
		const letter = String.fromCodePoint(place);
		if (letter.toLowerCase().length !== letter.length) changed.push(letter);
	}
	expect(changed).toEqual(["İ"]);
});

test("marks are read whatever stands between and before them", () => {
	const read = marksReader(["K1", "Kit 2", "K3"]);
	expect(read("K1 Kit 2, K3")).toEqual({ marks: ["K1", "Kit 2", "K3"], unknown: [] });
	expect(read(" ,; k1;;K9 ")).toEqual({ marks: ["K1"], unknown: ["K9"] });
	expect(read("K12")).toEqual({ marks: [], unknown: ["K12"] });
});
