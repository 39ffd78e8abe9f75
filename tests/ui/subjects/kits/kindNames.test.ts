import { expect, test } from "vitest";
import { kindNames } from "../../../../src/ui/subjects/kits/kindNames.ts";

/** Ten px a kit across. */
const pxOf = ({ kits }: { kits: number }) => ({ x: 10 * kits });
const curve = (kind: string, ...unmet: number[]) =>
	unmet.map((of, i) => ({ kind, kits: i + 1, unmet: of }));

test("each kind is named under the end of its curve, none over another", () => {
	const shown = [...curve("small", 9, 8), ...curve("large", 9, 8, 7), ...curve("other", 9)];
	expect(
		kindNames(shown, pxOf, 300).map(({ kind, kits, line, isLeft }) => [kind, kits, line, isLeft]),
	).toEqual([
		["large", 3, 0, false],
		["small", 2, 1, false],
		["other", 1, 2, false],
	]);
});

test("a name longer than the room beside its end is cut", () => {
	const shown = [...curve("of the second stage", 9, 8, 7, 6, 5), ...curve("b", 9)];
	expect(kindNames(shown, pxOf, 120).map(({ kind }) => kind)).toEqual(["of the…", "b"]);
});

test("a kind by itself needs no name", () => {
	expect(kindNames(curve("only", 9, 8), pxOf, 300)).toEqual([]);
	expect(kindNames([], pxOf, 300)).toEqual([]);
});
