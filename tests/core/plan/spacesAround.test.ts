import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { itemsAgainstPlan } from "../../../src/core/plan/record/itemsAgainstPlan.ts";
import { kitsUsedByDay } from "../../../src/core/plan/record/kitsUsedByDay.ts";
import { roundsOverDays } from "../../../src/core/plan/record/roundsOverDays.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { daysOfMonth } from "../../../src/core/values/isoMonth.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { everything } from "../contentOf.ts";
import { unitWith } from "../smallUnit.ts";

const recorded = unitWith(
	{ product_drawn_by: "rounds", unit_name: "", plan_days: 2 },
	{
		"records.csv": "date,births,kits_used\n2027-02-20,5,1\n2027-02-21,6,",
		"births.csv": "date,births,note\n2027-03-02,9,",
		"uses.csv": `at,kit,what,by,note
			2027-02-21 08:00,A,used,,
			2027-02-22 09:00,B,opened,,
			2027-02-22 10:00,,none_ready,,
			2027-02-22 11:00,Z,used,,`,
		"rounds-done.csv": `date,start,ended,kits,descaled,product,lot,litres
			2027-02-21,14:00,15:40,A B,no,,L1,5
			2027-02-22,14:00,,A,yes,powder,P1,
			2027-02-23,14:00,,B,no,powder,P9,
			2027-02-24,14:00,,B,no,,,`,
		"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note,purpose
			2027-02-28 09:00,A,4,yes,yes,yes,yes,yes,,,`,
		"journal.csv": "day,item,lot,entry,quantity,note\n2027-02-25,liquid,L1,count,9,",
		"placed.csv": `item,ordered_on,packs,expected_on,received_on,packs_received,lot,note
			liquid,2027-02-01,2,2027-02-10,2027-02-12,2,L2,
			powder,2027-02-01,1,,,,,
			powder,2027-02-02,1,,2027-02-20,1,P7,`,
	},
);

/** Of these the spaces are kept, and shown. */
const FREE_TEXTS = ["label", "note", "by"];

function spaced({ tables }: Workbook): Workbook {
	const around = (cell: string) => (cell === "" ? "  " : ` ${cell}\t`);
	return {
		tables: Object.fromEntries(
			Object.entries(tables).map(([file, { header, rows }]) => {
				const isFree = header.map((column) => FREE_TEXTS.includes(column));
				const of = (row: readonly string[]) =>
					row.map((cell, at) => (isFree[at] ? cell : around(cell)));
				return [file, { header, rows: rows.map(of) }];
			}),
		),
	};
}

test("spaces around what is written in cells change nothing of a plan and its record", () => {
	const made = (workbook: Workbook) => {
		const read = readWorkbook(workbook);
		const days = daysOfMonth("2027-02");
		return [
			everything(plan(workbook)),
			[...kitsUsedByDay(read.tables)],
			roundsOverDays(read, days),
			itemsAgainstPlan(read, days),
		];
	};
	const plain = made(recorded);
	expect(JSON.stringify(plain)).toContain("unknown-lot");
	expect(made(spaced(recorded))).toEqual(plain);
});
