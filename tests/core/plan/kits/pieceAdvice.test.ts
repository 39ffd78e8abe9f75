import { expect, test } from "vitest";
import { pieceAdvice } from "../../../../src/core/plan/kits/pieceAdvice.ts";
import { unitFigures } from "../../../../src/core/plan/unitFigures.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const FIRST = "2027-03-01";
const KINDS = "kind,piece,count,replace_after_rounds";
const ITEMS = "item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level";

/** One round a day of kit A over the last 28 days, and masks that last so many rounds. */
function said(limit: number, leadDays?: number) {
	const rounds = Array.from(
		{ length: 28 },
		(_, at) => `2027-02-${String(at + 1).padStart(2, "0")}`,
	);
	const files = {
		"kinds.csv": `${KINDS}\nbag set,bag,1,\nbag set,mask,2,${limit}`,
		"rounds-done.csv": ["date,start,kits", ...rounds.map((day) => `${day},07:00,A`)].join("\n"),
		...(leadDays ? { "items.csv": `${ITEMS}\nmask,other,piece,1,4,${leadDays},0,0.95` } : {}),
	};
	const unit = unitFigures(readWorkbook(smallUnit(files)), FIRST, FIRST);
	return wholeProblems(pieceAdvice(unit, FIRST)).map(
		({ weight, code, file, line, column, received, allowed, message }) => [
			[weight, code, file, line, column, received, allowed].join(" "),
			message.replace(/^.*\. /, ""),
		],
	);
}

const place = "kinds.csv 3 replace_after_rounds 28 rounds at most";

test.each([
	["past its limit", 27, undefined, `piece-past-limit ${place} 27 rounds`, /^Put a new one in/],
	["at its limit", 28, undefined, `piece-past-limit ${place} 28 rounds`, /^Put a new one in/],
	[
		"near it, with no spare listed",
		29,
		undefined,
		`piece-near-limit ${place} 29 rounds`,
		/^Find a spare/,
	],
	[
		"near it, with a spare that takes 20 days",
		40,
		20,
		`piece-near-limit ${place} 40 rounds`,
		/^A spare takes 20 days/,
	],
])("a piece %s", (_, limit, leadDays, head, words) => {
	const [[found, message] = []] = said(limit, leadDays);
	expect(found).toBe(`advice ${head}`);
	expect(message).toMatch(words);
});

test("a piece far from its limit is not spoken of", () => {
	expect(said(60, 20)).toEqual([]);
});
