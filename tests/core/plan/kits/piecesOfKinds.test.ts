import { expect, test } from "vitest";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { piecesOfKinds } from "../../../../src/core/plan/kits/piecesOfKinds.ts";
import { readTable } from "../../../../src/core/read/readTable.ts";
import { kindsSheet } from "../../../../src/core/sheets/kinds.ts";
import { kitsSheet } from "../../../../src/core/sheets/kits.ts";
import { tableOf } from "../../smallUnit.ts";

const pieces = (kits: string[], kinds: string[], wanted: (kind: string) => boolean = () => true) =>
	piecesOfKinds(
		readTable(kitsSheet, tableOf(["kit,kind,status,ready_since,note", ...kits].join("\n"))),
		readTable(kindsSheet, tableOf(["kind,piece,count", ...kinds].join("\n"))),
		wanted,
		({ piece }) => piece !== "thrown away",
	).outcome;

const a = "A,bag set,in_service,,";
const b = "B,suction,in_service,,";
const bagSet = ["bag set,bag,1", "bag set,valve,2", "bag set,mask,2"];
const suction = ["suction,bulb,3", "suction,tube,4"];

test.each([
	["one kind", [a], bagSet, 5],
	["the longest list of two", [a, b], [...bagSet, ...suction], 7],
	["only kinds that are owned count", [a], [...bagSet, ...suction], 5],
	["what is thrown away is not washed", [a], [...bagSet, "bag set,thrown away,4"], 5],
	["no kit yet: the longest list", [], [...bagSet, ...suction], 7],
])("%s", (_what, kits, kinds, count) => {
	expect(pieces(kits, kinds)).toEqual({ ok: true, value: count });
});

test("no kit yet of a kind planned apart: its own list", () => {
	const ofBagSet = pieces([], [...bagSet, ...suction], (kind) => kind === "bag set");
	expect(ofBagSet).toEqual({ ok: true, value: 5 });
});

test("of kinds planned apart each has its own list", () => {
	const of = (name: string) => pieces([a, b], [...bagSet, ...suction], (kind) => kind === name);
	expect([of("bag set"), of("suction")]).toEqual([
		{ ok: true, value: 5 },
		{ ok: true, value: 7 },
	]);
});

test.each([
	["a kind that is not listed", [a, b], bagSet, ["unknown-kind"]],
	["no kinds at all", [], [], ["no-kinds"]],
	["a count nobody can read", [a], ["bag set,bag,one"], ["bad-cell"]],
	["a kit nobody can read", ["A,bag set,lost,,"], bagSet, ["bad-cell"]],
])("%s leaves the pieces unknown", (_what, kits, kinds, codes) => {
	expect(problemsOf(pieces(kits, kinds)).map((p) => p.code)).toEqual(codes);
});

test.each([
	["the kinds that are listed", [...bagSet, "mask set,mask,1"], "bag set, mask set"],
	["that one is to be listed", [], "a kind listed with its pieces"],
])("a kit of no listed kind is named by its line, with %s", (_what, kinds, allowed) => {
	expect(problemsOf(pieces([b], kinds))).toMatchObject([
		{ file: "kits.csv", line: 2, column: "kind", received: "suction", allowed },
	]);
});
