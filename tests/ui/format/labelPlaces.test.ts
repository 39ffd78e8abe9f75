import { expect, test } from "vitest";
import { labelPlaces } from "../../../src/ui/format/labelPlaces.ts";

/** Labels as “place+width”; where each stands as the side and the line. */
test.each([
	["", ""],
	["0+100", "right 0"],
	["0+100 100+100", "right 0, right 0"],
	["99+100 0+100", "right 0, right 1"],
	["0+100 99+100", "right 0, right 1"],
	["50+100 50+100", "right 0, right 1"],
	["120+100 60+100 0+100", "right 0, right 1, right 0"],
	["20+100 10+100 0+100", "right 0, right 1, right 2"],
	["120+100 60+30 0+100", "right 0, right 0, right 1"],
	["200+100", "right 0"],
	["201+100", "left 0"],
	["260+100 170+100", "left 0, right 1"],
	["170+100 260+100", "right 0, left 1"],
])("“%s”: %s", (labels, places) => {
	const given = labels.split(" ").flatMap((label) => {
		const [at, wide] = label.split("+").map(Number);
		return at === undefined || wide === undefined ? [] : [{ at, wide }];
	});
	const found = labelPlaces(given, 300);
	expect(found.map(({ isLeft, line }) => `${isLeft ? "left" : "right"} ${line}`).join(", ")).toBe(
		places,
	);
});
