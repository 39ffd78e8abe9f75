import { describe, expect, test } from "vitest";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { Store } from "../../../../src/ui/state/store.ts";
import { learned } from "../../../../src/ui/subjects/monday/usageStep.ts";
import { itemsTable } from "../../../../src/ui/subjects/month/itemsTable.ts";
import { unitWith } from "../../../core/smallUnit.ts";
import { withTextDocument } from "../../textDocument.ts";

withTextDocument();

const days = Array.from({ length: 90 }, (_, at) =>
	new Date(Date.UTC(2027, 0, 1 + at)).toISOString().slice(0, 10),
);
/** 6 g go each day; rounds, one a day, are written down from 1 March on. The plan of a week is over on 31 March. */
const unit = unitWith(
	{ plan_start: "2027-03-25" },
	{
		"usage.csv": "item,basis,quantity\npowder,round,7",
		"lots.csv": "item,lot,quantity,received_on\npowder,P1,5000,2026-12-20",
		"journal.csv": [
			"day,item,lot,entry,quantity",
			...days.map((day) => `${day},powder,P1,issue,6`),
		].join("\n"),
		"rounds-done.csv": ["date,start,kits", ...days.slice(59).map((day) => `${day},07:00,A`)].join(
			"\n",
		),
	},
);

// docs/manual/the-month.md: over the days on which both the journal and the rounds were kept.
describe("what goes each time, by a journal that is older than the rounds", () => {
	test("is taken over on Monday as it went in the rounds that were written down", () => {
		expect(learned(new Store(unit).state)).toMatchObject([{ used: 186, times: 31, each: 6 }]);
	});

	test("stands in the month's table with the days it is of, beside the books of all days", () => {
		const words = itemsTable(readWorkbook(unit), days)?.textContent;
		expect(words).toContain("540");
		expect(words).toContain("6 for each round by the books (186 for 31); 7 in the plan.");
		expect(words).toMatch(/Used each time.*1 Mar.* to .*31 Mar/);
	});
});
