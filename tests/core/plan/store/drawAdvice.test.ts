import { expect, test } from "vitest";
import { drawAdvice } from "../../../../src/core/plan/store/drawAdvice.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const ROUNDS = "date,start,kits,product,lot,litres";
const JOURNAL = "day,item,lot,entry,quantity,note";
const round = (day: string, lot = "L1") => `2027-${day},07:00,A,,${lot},7`;

function said(rounds: string[], journal: string[] = [], product_drawn_by = "rounds") {
	const files = {
		"rounds-done.csv": [ROUNDS, ...rounds].join("\n"),
		"journal.csv": [JOURNAL, ...journal].join("\n"),
	};
	return wholeProblems(drawAdvice(readWorkbook(unitWith({ product_drawn_by }, files)))).map(
		({ weight, code, file, line, column, received }) =>
			[weight, code, file, line, column, received].join(" "),
	);
}

const issue = "2027-02-20,liquid,L1,issue,3,";
const twice = "advice issue-on-round-day journal.csv 2 entry 3";

test.each<[string, Parameters<typeof said>, string[]]>([
	["a round that draws", [[round("02-20")]], []],
	["an issue on its day", [[round("02-20")], [issue]], [twice]],
	["an issue on another day", [[round("02-21")], [issue]], []],
	["drawn by the journal", [[round("02-20"), round("02-21", "")], [issue], "journal"], []],
	[
		"rounds without a lot: the last of them is named",
		[[round("02-20", "none"), round("02-21", ""), round("02-22")]],
		["advice round-draws-nothing rounds-done.csv 3 lot "],
	],
	[
		"both",
		[[round("02-20"), round("02-21", "L9")], [issue]],
		[twice, "advice round-draws-nothing rounds-done.csv 3 lot L9"],
	],
	["a round after the plan", [[round("03-08", "")]], []],
])("%s", (_, of, expected) => {
	expect(said(...of)).toEqual(expected);
});
