import { describe, expect, test } from "vitest";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { dailyPicture } from "../../../../src/ui/subjects/month/dailyPicture.ts";
import { measuresTable } from "../../../../src/ui/subjects/month/measuresTable.ts";
import { monthWords } from "../../../../src/ui/subjects/month/monthWords.ts";
import { smallUnit } from "../../../core/smallUnit.ts";
import { withTextDocument } from "../../textDocument.ts";

withTextDocument();

/**
 * A March in which a kit is used every second day, as the plan expects, and only the log of
 * the bench says so: 16 lines, on the odd days, 5 births a day.
 */
const march = daysOfMonth("2027-03");
const odd = march.filter((_, at) => at % 2 === 0);
const read = readWorkbook(
	smallUnit({
		"records.csv": ["date,births,kits_used", ...march.map((day) => `${day},5,`)].join("\n"),
		"uses.csv": ["at,kit,what", ...odd.map((day) => `${day} 10:00,A,used`)].join("\n"),
		"past-plans.csv": [
			"date,measure_of,expected,set_aside",
			...march.map((day) => `${day},kits_used,0.5,`),
		].join("\n"),
	}),
);

// record.md: planned against done; a day without a line, while uses are kept, is a day without a use (as the register learns).
describe("kits used by the log alone, on as many days as planned", () => {
	test("fit the plan: the days without a use are compared too", () => {
		// 31 × 0.5 planned; Poisson 15.5: at most 7 has 0.013, at most 8 0.029; at most 23 has 0.975, at most 24 0.985.
		expect(dailyPicture(read, "kits_used", march).words).toBe(
			"The kits used fit the plan. Over the days planned and recorded (31), kits used by the plan’s average: 15.5; recorded: 16; chance alone gives 8 to 24.",
		);
	});

	test("are so many per 100 births of the whole month", () => {
		// 16 of 31 × 5, and not of the 16 days alone.
		expect(monthWords(read, march, false)[0]).toMatch(
			/^Kits used per 100 births: 10\.3, from 16 kits at 155 births/,
		);
	});

	test("stand in the table with the days that have no line", () => {
		const words = measuresTable(read, march).textContent;
		expect(words).toContain("16 of 31 days recorded; other days without a kit used: 15");
		expect(words).toContain("31 days: average of the plan 15.5, done 16");
	});
});
