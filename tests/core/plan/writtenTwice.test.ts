import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { unitWith } from "../smallUnit.ts";
import { wholeProblems } from "../wholeProblems.ts";

const said = (code: string, files: Record<string, string>) =>
	wholeProblems(plan(unitWith({}, files)).problems)
		.filter((problem) => problem.code === code)
		.map(({ weight, file, line, received }) => [weight, file, line, received].join(" "));

// record.md: two copies brought together lose no line; an order received twice, and what cannot be, is a clear problem.
test("one delivery that two copies received into a lot is asked about, and two boxes of one visit are not", () => {
	const receipts = (...lines: string[]) => ({
		"journal.csv": ["day,item,lot,entry,quantity,note,id", ...lines].join("\n"),
	});
	const one = "2027-02-20,powder,P1,receipt,500,Esi,";
	const found = (...lines: string[]) => said("receipt-written-twice", receipts(...lines));
	expect(
		found(`${one}a1`, "2027-02-20,powder,P1,issue,500,,c", `${one.replace("Esi", "Kofi")}b7`),
	).toEqual(["advice journal.csv 4 lines 2 and 4"]);
	expect(found(`${one}a1`, `${one}a1`)).toEqual([]);
	expect(found(`${one}a1`, one)).toEqual([]);
	for (const other of [
		"2027-02-21,powder,P1,receipt,500,Esi,b7",
		"2027-02-20,powder,P1,receipt,400,Esi,b7",
		"2027-02-20,liquid,L1,receipt,500,Esi,b7",
		"2027-02-20,powder,P1,count,500,Esi,b7",
	])
		expect(found(`${one}a1`, other)).toEqual([]);
});

test("a kit is used once at one minute, whoever copied it from the log", () => {
	const uses = (...lines: string[]) =>
		said("use-written-twice", { "uses.csv": ["at,kit,what,by", ...lines].join("\n") });
	expect(uses("2027-02-20 09:40,A,used,Esi", "2027-02-20 09:40,a,opened,Kofi")).toEqual([
		"advice uses.csv 3 lines 2 and 3",
	]);
	expect(uses("2027-02-20 09:40,A,used,", "2027-02-20 09:41,A,used,")).toEqual([]);
	expect(uses("2027-02-20 09:40,A,used,", "2027-02-20 09:40,B,used,")).toEqual([]);
	expect(uses("2027-02-20,A,used,", "2027-02-20,A,used,")).toEqual([]);
	expect(uses("2027-02-20 09:40,,none_ready,", "2027-02-20 09:40,,none_ready,")).toEqual([]);
});
