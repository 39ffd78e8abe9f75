import { describe, expect, test } from "vitest";
import type { Copy } from "../../../src/core/merge/descent.ts";
import { mergeCopies } from "../../../src/core/merge/mergeCopies.ts";
import { linesOf, next, root, sheet, told } from "./copies.ts";

const USES = "uses.csv";
const uses = (...lines: string[]) => sheet(USES, "at,kit,what,by,note,id", ...lines);
const use = (at: string, kit: string, id = "") => `2027-03-01 ${at},${kit},used,,,${id}`;

describe("lines of a log", () => {
	test("entered in both copies stand in the order of their days", () => {
		const start = root(uses(use("01:00", "A", "s1")));
		const ours = next(
			start,
			uses(use("01:00", "A", "s1"), use("05:00", "B", "a1"), use("09:00", "A", "a2")),
			"ours",
		);
		const theirs = next(start, uses(use("01:00", "A", "s1"), use("07:00", "C", "b1")), "theirs");
		const hours = (copy: Copy) => linesOf(copy, USES).map((line) => line.slice(11, 16));
		expect(hours(mergeCopies(ours, theirs)).slice(1)).toEqual(["01:00", "05:00", "07:00", "09:00"]);
		expect(hours(mergeCopies(theirs, ours))).toEqual(hours(mergeCopies(ours, theirs)));
	});

	test.each([
		[
			"of two marks are two lines, whatever they say",
			use("02:00", "A", "a1"),
			use("02:00", "A", "b1"),
			2,
		],
		["of one mark are one line", use("02:00", "A", "a1"), use("02:00", "A", "a1"), 1],
		[
			"without a mark are one line where they say the same",
			use("02:00", "A"),
			use("02:00", "A"),
			1,
		],
		["without a mark are two where they do not", use("02:00", "A"), use("02:00", "B"), 2],
		["of which one lost its mark are one", use("02:00", "A", "a1"), use("02:00", "A"), 1],
	])("%s", (_, ours, theirs, count) => {
		const together = mergeCopies(root(uses(ours)), root(uses(theirs)));
		expect(linesOf(together, USES)).toHaveLength(1 + count);
		expect(together.conflicts).toEqual([]);
	});

	test("of one visit are known among each other by what they say, also where one was put right", () => {
		const [one, other] = [use("02:00", "A", "v"), use("05:00", "B", "v")];
		const right = other.replace("used", "opened");
		const together = mergeCopies(root(uses(one, other)), root(uses(one, right)));
		expect(told(together)).toEqual([["2027-03-01 05:00, B, used", "what", "used", "opened"]]);
		expect(linesOf(together, USES)).toHaveLength(3);
	});

	test("of one visit that counted a whole store, each put right elsewhere, are none doubled", () => {
		const count = (day: string) =>
			uses(...Array.from({ length: 60 }, (_, i) => use("02:00", `K${i}`, "v").replace("01", day)));
		const together = mergeCopies(root(count("01")), root(count("02")));
		expect(linesOf(together, USES)).toHaveLength(61);
		expect(together.conflicts).toHaveLength(60);
	});

	test("without marks, put right in one copy, are the same where the other wrote a note in one", () => {
		const lines = (day: string, note = "") =>
			uses(
				...Array.from(
					{ length: 30 },
					(_, i) => `2027-03-${day} 02:00,K${i},used,,${i === 29 ? note : ""},`,
				),
			);
		const start = root(lines("01"));
		const [ours, theirs] = [
			next(start, lines("02"), "ours"),
			next(start, lines("01", "torn"), "t"),
		];
		for (const together of [mergeCopies(ours, theirs), mergeCopies(theirs, ours)]) {
			expect(linesOf(together, USES).slice(1)).toEqual(
				linesOf(root(lines("02", "torn")), USES).slice(1),
			);
			expect(together.conflicts).toEqual([]);
		}
	});

	test("of one visit, of which each copy deleted another, are both gone", () => {
		const [one, other] = [use("02:00", "A", "v"), use("05:00", "B", "v")];
		const start = root(uses(one, other));
		const together = mergeCopies(
			next(start, uses(one), "ours"),
			next(start, uses(other), "theirs"),
		);
		expect(linesOf(together, USES)).toHaveLength(1);
		expect(together.conflicts).toEqual([]);
	});

	test("without a mark, said twice in one copy, stand twice", () => {
		const [once, twice] = [
			root(uses(use("02:00", "A"))),
			root(uses(use("02:00", "A"), use("02:00", "A"))),
		];
		expect(linesOf(mergeCopies(once, twice), USES)).toHaveLength(3);
		expect(linesOf(mergeCopies(twice, twice), USES)).toHaveLength(3);
	});
});
