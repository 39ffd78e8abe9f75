import { expect, test } from "vitest";
import { byPlace } from "../../src/core/byPlace.ts";
import { type Place, problem } from "../../src/core/problem.ts";

const at = (file: string, line: Place["line"], column: string) =>
	problem({ file, line, column }, { code: "a", received: "", allowed: "", message: "" });

test("problems stand by file, line and column; what concerns no single place comes first", () => {
	const sorted = [
		at("", null, ""),
		at("kits.csv", null, "note"),
		at("kits.csv", 2, "kit"),
		at("kits.csv", 2, "status"),
		at("kits.csv", 10, "kit"),
		at("lots.csv", 1, "a"),
	];
	expect([...sorted].reverse().sort(byPlace)).toEqual(sorted);
	expect([...sorted].sort(byPlace)).toEqual(sorted);
	expect(sorted.map((one) => byPlace(one, one))).toEqual(sorted.map(() => 0));
});
