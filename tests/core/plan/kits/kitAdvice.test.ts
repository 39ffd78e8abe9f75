import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { withCounts } from "../../../../src/core/plan/dayFigures.ts";
import { coverFigures } from "../../../../src/core/plan/kits/coverFigures.ts";
import { kitAdvice } from "../../../../src/core/plan/kits/kitAdvice.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { plannedUnit } from "../../../../src/core/plan/plannedUnit.ts";
import type { PlanTables } from "../../../../src/core/plan/planTables.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { problemCodes } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const kits = (count: number) =>
	[
		"kit,kind,status,ready_since,note",
		...Array.from({ length: count }, (_, at) => `K${at},bag set,in_service,2027-02-28,`),
	].join("\n");
function said(count: number, settings: Record<string, string | number>) {
	const workbook = unitWith(
		{ plan_days: 1, delivery_beds: 3, ...settings },
		{ "kits.csv": kits(count) },
	);
	const planned = valueIn({ outcome: plannedUnit(readWorkbook(workbook)) });
	if (!planned) throw new Error("the unit has no days");
	const { unit, days } = planned;
	const tables = { days: withCounts(unit, days), cover: coverFigures(unit, days) };
	return wholeProblems(kitAdvice(unit, tables as unknown as PlanTables));
}

const eachUse = { reprocessing: "after_each_use" };

test.each([
	["renewed in time", { renew_kits: "in_time" }, []],
	[
		"renewed once out of date",
		{ renew_kits: "when_expired" },
		["unit.csv renew_kits when_expired"],
	],
	["after each use there is no round to wait for", { renew_kits: "when_expired", ...eachUse }, []],
])("%s", (_, settings, expected) => {
	const found = said(9, settings).filter(({ code }) => code === "renewed-when-expired");
	expect(found.map(({ file, column, received }) => `${file} ${column} ${received}`)).toEqual(
		expected,
	);
});

test.each([
	[0, "No kit is in service; 4 are needed."],
	[1, "One kit is in service and 4 are needed."],
	[3, "3 kits are in service and 4 are needed."],
	[4, undefined],
	[5, undefined],
])("%d kits for three beds and one to spare: %s", (count, message) => {
	const found = said(count, eachUse).find(({ code }) => code === "too-few-kits");
	expect(found?.message).toBe(message);
	if (found)
		expect([found.received, found.allowed]).toEqual([`kits in service: ${count}`, "at least 4"]);
});

test("nothing is said of too few where a line of the register cannot be read", () => {
	const made = plan(
		unitWith(
			{ plan_days: 1, delivery_beds: 3, ...eachUse },
			{ "kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_srv,," },
		),
	);
	expect(problemCodes(made)).not.toContain("too-few-kits");
});
