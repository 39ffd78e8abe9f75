import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { smallUnit } from "../../smallUnit.ts";

const found = (changes: Record<string, string>, file: string) =>
	plan(smallUnit(changes))
		.problems.filter((problem) => problem.file === file)
		.map(({ code, line, column, received, weight }) => [code, line, column, received, weight]);

describe("what is wrong with the uses", () => {
	const uses = (line: string) => found({ "uses.csv": `at,kit,what,by,note\n${line}` }, "uses.csv");
	test.each([
		["2027-02-27 09:00,X,used,,", ["unknown-kit", 2, "kit", "X", "error"]],
		["2027-02-27 09:00,,used,,", ["unknown-kit", 2, "kit", "", "error"]],
		["2027-02-27 09:00, X ,used,,", ["unknown-kit", 2, "kit", "X", "error"]],
		["2027-02-27 09:00,A,none_ready,,", ["kit-where-none-was-ready", 2, "kit", "A", "error"]],
		["2027-03-08 00:00,A,used,,", ["record-in-future", 2, "at", "2027-03-08", "error"]],
		["2027-02-30 09:00,A,used,,", ["bad-cell", 2, "at", "2027-02-30 09:00", "error"]],
		["2027-02-27 09:00,A,borrowed,,", ["bad-cell", 2, "what", "borrowed", "error"]],
	])("%s", (line, problem) => {
		expect(uses(line)).toEqual([problem]);
	});

	test.each([
		"2027-02-27 09:00,A,used,Ama,",
		"2027-02-27,,none_ready,,",
		"2027-02-27, ,none_ready,,",
		"2027-02-27, A ,used,,",
		"2027-03-01 08:00,A,opened,,",
		"2027-03-07 23:59,A,used,,",
	])("%s is right", (line) => {
		expect(uses(line)).toEqual([]);
	});
});

test("a kit or lot whose line has a bad cell is known: what names it is not wrong", () => {
	const changes = {
		"kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_srv,,\nB,bag set,in_service,,",
		"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			liquid,L1,15,2027-02-30,2027-02-20,,`,
		"uses.csv": "at,kit,what,by,note\n2027-02-27 09:00,a,used,,",
		"rounds-done.csv": "date,start,ended,kits,product,lot\n2027-02-27,10:00,11:00,A B,liquid,L1",
		"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note
			2027-02-27 11:30,A,9,yes,,,,,,`,
	};
	const codes = (file: string) => found(changes, file).map(([code]) => code);
	expect(["uses.csv", "rounds-done.csv"].map(codes)).toEqual([[], []]);
	// The kind of A is known, and it lists 5 pieces.
	expect(codes("checks.csv")).toEqual(["too-many-pieces"]);
	expect([codes("kits.csv"), codes("lots.csv")]).toEqual([
		expect.arrayContaining(["bad-cell"]),
		expect.arrayContaining(["bad-cell"]),
	]);
});

test("nor of a kit that is listed twice; one of an unreadable kind has no list to count by", () => {
	const kits = (...lines: string[]) => ["kit,kind,status,ready_since,note", ...lines].join("\n");
	const uses = "at,kit,what,by,note\n2027-02-27 09:00,A,used,,";
	const twice = kits("A,bag set,in_service,,", "A,bag set,in_service,,", "B,bag set,in_service,,");
	expect(found({ "kits.csv": twice, "uses.csv": uses }, "uses.csv")).toEqual([]);
	const checks = `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note
		2027-02-27 11:30,A,9,yes,,,,,,`;
	const nameless = kits("A,,in_service,,");
	expect(found({ "kits.csv": nameless, "checks.csv": checks }, "checks.csv")).toEqual([]);
});

describe("what is wrong with the rounds done", () => {
	const HEADER = "date,start,ended,kits,product,lot,soak_in,soak_out";
	const rounds = (...lines: string[]) =>
		found({ "rounds-done.csv": [HEADER, ...lines].join("\n") }, "rounds-done.csv");
	test.each([
		["2027-02-27,10:00,11:00,A X,,,,", ["unknown-kit", 2, "kits", "X", "error"]],
		["2027-03-09,10:00,11:00,A,,,,", ["record-in-future", 2, "date", "2027-03-09", "error"]],
		["2027-02-27,10:00,11:00,A,liquid,L9,,", ["unknown-lot", 2, "lot", "L9", "error"]],
		["2027-02-27,10:00,11:00,A,powder,L1,,", ["unknown-lot", 2, "lot", "L1", "error"]],
		[
			"2027-02-27,10:00,11:00,A,,,10:30,10:20",
			["soak-out-before-in", 2, "soak_out", "10:20", "error"],
		],
	])("%s", (line, problem) => {
		expect(rounds(line)).toEqual([problem]);
	});

	test.each([
		"2027-02-27,10:00,11:00,A B,liquid,L1,10:20,10:40",
		"2027-02-27,23:00,00:40,A,,,23:50,00:10",
		"2027-02-27,10:00,,A,,,,",
		"2027-03-07,10:00,11:00,A,,,,",
		"2027-02-27,10:00,11:00,A,,L1,10:30,",
		"2027-02-27,10:00,11:00,A, liquid , L1 ,,10:30",
	])("%s is right", (line) => {
		expect(rounds(line)).toEqual([]);
	});

	test("a kit in two rounds at once, over midnight too; one after the other is right", () => {
		const first = "2027-02-27,23:00,00:40,A B,,,,";
		expect(rounds(first, "2027-02-28,00:30,01:30,B C,,,,")).toEqual([
			["kit-in-two-rounds", 3, "kits", "B", "error"],
		]);
		expect(rounds(first, "2027-02-28,00:40,01:30,B C,,,,")).toEqual([]);
		expect(rounds("2027-02-28,00:30,01:30,B C,,,,", first)).toEqual([
			["kit-in-two-rounds", 2, "kits", "B", "error"],
		]);
	});

	test("a round without an end takes as long as its kits do by the plan", () => {
		const open = "2027-02-27,10:00,,A B,,,,";
		expect(rounds(open, "2027-02-27,10:30,11:00,B C,,,,")).toEqual([
			["kit-in-two-rounds", 3, "kits", "B", "error"],
		]);
		expect(rounds(open, "2027-02-27,20:00,21:00,B C,,,,")).toEqual([]);
	});

	test("one round, one row: a date and start stand once", () => {
		const line = "2027-02-27,10:00,11:00,A,,,,";
		expect(rounds(line, line).map(([code]) => code)).toEqual(["doubled-row", "doubled-row"]);
	});
});

test("a use without a kit, and one of a kit that is not listed, are told apart in words", () => {
	const words = (kit: string) =>
		plan(smallUnit({ "uses.csv": `at,kit,what,by,note\n2027-02-27 09:00,${kit},used,,` }))
			.problems.filter(({ code }) => code === "unknown-kit")
			.map(({ message }) => message);
	expect(words("")).toEqual([expect.stringMatching(/^No kit is named/)]);
	expect(words("X")).toEqual([expect.stringMatching(/^There is no kit "X"/)]);
});

test.each([
	["2027-03-07", []],
	["2027-03-08", [["ready-in-future", 2, "ready_since", "2027-03-08", "error"]]],
])("a kit that is said to be ready since %s", (day, problems) => {
	const kits = `kit,kind,status,ready_since,note\nA,bag set,in_service,${day},`;
	expect(
		found({ "kits.csv": kits }, "kits.csv").filter(([code]) => code !== "too-few-kits"),
	).toEqual(problems);
});
