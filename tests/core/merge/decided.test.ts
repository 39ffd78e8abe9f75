import { describe, expect, test } from "vitest";
import { type CellState, decided } from "../../../src/core/merge/decided.ts";

describe("whose text counts", () => {
	const cell = (text: string, isNew = false, neverFilled = false): CellState => ({
		text,
		save: "",
		isNew,
		neverFilled,
	});
	test.each([
		["the same, old", cell("8"), cell(" 8 "), "ours"],
		["the same, spaces around ours", cell(" 8 "), cell("8", true), "theirs"],
		["the same, new in theirs", cell("8"), cell("8", true), "theirs"],
		["the same, new in ours", cell("8", true), cell("8"), "ours"],
		["the same, new in both", cell("8", true), cell("8", true), "ours"],
		["the same, spaces around ours, new in both", cell(" 8 ", true), cell("8", true), "ours"],
		["ours never filled", cell("", true, true), cell("8"), "theirs"],
		["theirs never filled", cell("8"), cell("", true, true), "ours"],
		["changed in ours", cell("8", true), cell("9"), "ours"],
		["changed in theirs", cell("8"), cell("9", true), "theirs"],
		["changed in both", cell("8", true), cell("9", true), "open"],
		["nobody knows", cell("8"), cell("9"), "open"],
	])("%s", (_what, ours, theirs, expected) => {
		expect(decided(ours, theirs)).toBe(expected);
	});
});
