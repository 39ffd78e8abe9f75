import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const CODES = ["too-few-kits", "renewed-when-expired"];
const kits = (count: number) =>
	[
		"kit,kind,status,ready_since,note",
		...Array.from({ length: count }, (_, at) => `K${at},bag set,in_service,2027-02-28,`),
	].join("\n");
const said = (count: number, settings: Record<string, string | number>) =>
	wholeProblems(
		plan(
			unitWith({ plan_days: 1, delivery_beds: 3, ...settings }, { "kits.csv": kits(count) }),
		).problems.filter(({ code }) => CODES.includes(code)),
	);

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
