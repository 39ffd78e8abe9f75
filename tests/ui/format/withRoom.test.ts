import { expect, test } from "vitest";
import { withRoom } from "../../../src/ui/format/withRoom.ts";

test.each([
	["one below the other", ["0 0", "0 13", "0 14", "0 20", "0 28"], ["0 0", "0 14", "0 28"]],
	["beside each other", ["0 0", "39 5", "40 5", "79 0"], ["0 0", "40 5"]],
	["one alone", ["5 5"], ["5 5"]],
	["none", [], []],
])("a number is written where it touches none before: %s", (_what, points, kept) => {
	const pxOf = (point: string) => {
		const [x = 0, y = 0] = point.split(" ").map(Number);
		return { x, y };
	};
	expect(withRoom(points, pxOf)).toEqual(kept);
});
