import { describe, expect, test } from "vitest";
import { countsWritten } from "../../../../src/core/edit/monday/countsWritten.ts";
import { daysWritten, dayTexts } from "../../../../src/core/edit/monday/daysWritten.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { smallUnit } from "../../smallUnit.ts";

const register = {
	"records.csv": "date,births,kits_used\n2027-02-27,5,1\n2027-02-28,7,",
};
const day = (date: string, births: string, kitsUsed = "") => ({ date, births, kitsUsed });

describe("days of the register", () => {
	test("each goes into its own row, a blank day into none, a day that stays stays", () => {
		const before = smallUnit(register);
		const written = daysWritten(before, [
			day("2027-02-27", "5", "1"),
			day("2027-02-28", "8", "0"),
			day("2027-03-01", "", ""),
			day("2027-03-02", " 6 "),
		]);
		expect(written.ok && written.workbook.tables["records.csv"]?.rows).toEqual([
			["2027-02-27", "5", "1"],
			["2027-02-28", "8", "0"],
			["2027-03-02", "6", ""],
		]);
		expect(dayTexts(before, "2027-02-28")).toEqual(day("2027-02-28", "7"));
		expect(dayTexts(before, "2027-03-09")).toEqual(day("2027-03-09", ""));
		const same = daysWritten(before, [
			day("2027-02-27", " 5 ", " 1 "),
			day("2027-03-01", " ", " "),
		]);
		expect(same.ok && same.workbook).toBe(before);
		const only = daysWritten(before, [day("2027-02-27", "5", " 2 "), day("2027-03-01", "", "1")]);
		expect(only.ok && only.workbook.tables["records.csv"]?.rows).toEqual([
			["2027-02-27", "5", "2"],
			["2027-02-28", "7", ""],
			["2027-03-01", "", "1"],
		]);
		const emptied = daysWritten(before, [day("2027-02-27", "", "")]);
		expect(emptied.ok && emptied.workbook.tables["records.csv"]?.rows[0]).toEqual([
			"2027-02-27",
			"",
			"",
		]);
	});

	test("one wrong day keeps all from being written, and is named", () => {
		const written = daysWritten(smallUnit(register), [
			day("2027-03-01", "6"),
			day("2027-03-02", "many"),
		]);
		expect(written.ok ? [] : written.wrong.map(({ date }) => date)).toEqual(["2027-03-02"]);
		expect(written.ok ? "" : written.wrong[0]?.words).toContain("many");
	});
});

describe("counts of the whole store", () => {
	const counted = (workbook: Workbook, quantities: Record<string, string>) =>
		countsWritten(
			workbook,
			"2027-03-08",
			Object.entries(quantities).map(([lot, quantity]) => ({
				item: lot.startsWith("P") ? "powder" : "liquid",
				lot,
				quantity,
			})),
			"Esi",
		);

	test("are one step; what was not counted gets no line, and what differs is named", () => {
		const result = counted(smallUnit(), { L1: "8.5", P1: "500", L2: " " });
		if (!result.ok) throw new Error("not written");
		expect(result.counted).toBe(2);
		expect(result.differences).toEqual([{ item: "liquid", lot: "L1", books: 10, counted: 8.5 }]);
		expect(readWorkbook(result.workbook).tables.journal.rows.map(({ value }) => value.lot)).toEqual(
			["L1", "P1"],
		);
	});

	test("are held against the books of their day, whatever was written down of later days", () => {
		const journal = `day,item,lot,entry,quantity,note
			2027-03-08,liquid,L1,issue,1,
			2027-03-09,liquid,L1,issue,2,`;
		const written = (quantity: string) => {
			const result = counted(smallUnit({ "journal.csv": journal }), { L1: quantity });
			return result.ok ? result.differences : undefined;
		};
		expect(written("9")).toEqual([]);
		expect(written("7")).toEqual([{ item: "liquid", lot: "L1", books: 9, counted: 7 }]);
	});

	test("one that cannot be is named by its place, and nothing is written", () => {
		const result = counted(smallUnit(), { L1: "8.5", L9: "3", P1: "some" });
		expect(result.ok ? [] : result.wrong.map(({ at, field }) => [at, field.field])).toEqual([
			[1, "lot"],
			[2, "quantity"],
		]);
	});
});
