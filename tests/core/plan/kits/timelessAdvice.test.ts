import { expect, test } from "vitest";
import { pass, withRecord } from "./recordedUnit.ts";

const DAY = "2027-02-28";
const ROUND = `${DAY},10:00,11:30,A,no`;
const FAILED = "A,5,yes,yes,no,yes,yes,,";
const found = (record: Parameters<typeof withRecord>[0]) =>
	withRecord(record).problems.flatMap((p) =>
		p.code === "no-time" ? [[p.file, p.line, p.column, p.weight, p.message.split(": ")[1]]] : [],
	);
const LATE = "it counts at the end of that day, after the round. Write the time too.";
const EARLY = "it counts at the beginning of that day, before the round. Write the time too.";

test.each<[string, Parameters<typeof withRecord>[0], unknown[]]>([
	["a use", { uses: [`${DAY},A,used,,`] }, [["uses.csv", 2, "at", "advice", LATE]]],
	["a kit opened", { uses: [`${DAY},a,opened,,`] }, [["uses.csv", 2, "at", "advice", LATE]]],
	[
		"a failed check",
		{ checks: [`${DAY},${FAILED}`] },
		[["checks.csv", 2, "checked_at", "advice", LATE]],
	],
	["a passed check", { checks: [pass(DAY)] }, [["checks.csv", 2, "checked_at", "advice", EARLY]]],
	["a use with its time", { uses: [`${DAY} 09:00,A,used,,`] }, []],
	["a kit named where none was ready", { uses: [`${DAY},A,none_ready,,`] }, []],
	["another kit's use", { uses: [`${DAY},B,used,,`] }, []],
	["another day's use", { uses: ["2027-02-27,A,used,,"] }, []],
	["a check that was not finished", { checks: [`${DAY},A,,yes,,,,,,`] }, []],
])("asks for the time that decides how a kit stands: %s", (_, record, problems) => {
	expect(found({ rounds: [ROUND], ...record })).toEqual(problems);
});

test("of a round over midnight both days, of the plan's last day too; nothing of days after the plan", () => {
	const uses = ["2027-02-27,A,used,,", `${DAY},A,used,,`];
	expect(found({ rounds: ["2027-02-27,23:00,00:40,A,no"], uses })).toHaveLength(2);
	const last = { rounds: ["2027-03-07,10:00,11:30,A,no"], uses: ["2027-03-07,A,used,,"] };
	expect(found(last)).toHaveLength(1);
	const later = { rounds: ["2027-03-08,10:00,11:30,A,no"], uses: ["2027-03-08,A,used,,"] };
	expect(found(later)).toEqual([]);
});
