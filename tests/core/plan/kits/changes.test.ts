import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { changes } from "../../../../src/core/plan/kits/changes.ts";
import { plannedUnit } from "../../../../src/core/plan/plannedUnit.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { leversSheet, MOST_ROUNDS_MOVED } from "../../../../src/core/sheets/levers.ts";
import { unitWith } from "../../smallUnit.ts";

const rowOfEach = (kinds: number, header: string, row: string) =>
	[header, ...Array.from({ length: kinds }, (_, i) => row.replaceAll("#", `${i}`))].join("\n");
const roundsAt = (hours: readonly number[]) =>
	["start,label", ...hours.map((hour) => `${String(hour).padStart(2, "0")}:00,`)].join("\n");
/** A gap of six hours from 11:00 to 17:00, else two hours and one. */
const nine = [1, 3, 5, 7, 9, 11, 17, 19, 22];

function changesOf(...of: Parameters<typeof unitWith>) {
	const planned = valueIn({ outcome: plannedUnit(readWorkbook(unitWith(...of))) });
	if (!planned) throw new Error("the unit has no days");
	return changes(planned.unit);
}

function hoursTried(rounds: readonly number[], kinds: number): string[] {
	const files = {
		"rounds.csv": roundsAt(rounds),
		"kinds.csv": rowOfEach(kinds, "kind,piece,count", "kind #,bag,1"),
		"kits.csv": rowOfEach(kinds, "kit,kind,status,ready_since,note", "K#,kind #,in_service,,"),
		"kind-use.csv": rowOfEach(kinds, "kind,uses_per_100_births,beds,spares", "kind #,5,,"),
	};
	return changesOf({}, files).flatMap(({ unit, name, oneOfMany }) => {
		expect(unit.kinds).toHaveLength(kinds);
		return oneOfMany ? [name] : [];
	});
}

const moved = (names: readonly string[]) => new Set(names.map((name) => name.slice(4, 9)));

test.each([
	["8 rounds", nine.slice(0, 8), 1],
	["24 rounds times kinds", [1, 7, 13, 19], 6],
])("with %s every round is tried at other hours", (_, rounds, kinds) => {
	const tried = hoursTried(rounds, kinds);
	expect(moved(tried).size).toBe(rounds.length);
	for (const name of tried) expect(name).toMatch(/instead$/);
});

// Of two hours that spare as much the first tried is shown.
test("a round is tried at each hour up to three before it and three after, the earliest first", () => {
	expect(hoursTried([12], 1).map((name) => name.slice(19, 24))).toEqual([
		"09:00",
		"10:00",
		"11:00",
		"13:00",
		"14:00",
		"15:00",
	]);
});

test.each([
	["9 rounds", nine, 1, ["11:00", "17:00"]],
	["28 rounds times kinds", [1, 6, 13, 19], 7, ["06:00", "13:00"]],
	["a longest gap over midnight", [1, 2, 3, 4, 5, 6, 7, 8, 9], 1, ["01:00", "09:00"]],
])("with %s those around the longest gap are, and the change says so", (_, rounds, kinds, of) => {
	const tried = hoursTried(rounds, kinds);
	expect([...moved(tried)].sort()).toEqual(of);
	for (const name of tried) expect(name).toContain("(only two rounds tried)");
});

test.each([
	["64 rounds times kinds, two rounds are tried", [1, 7, 13, 19, 2, 8, 14, 20], 8, 2],
	["65, none", [1, 6, 11, 16, 21], 13, 0],
])("with %s", (_, rounds, kinds, tried) => {
	expect(moved(hoursTried(rounds, kinds)).size).toBe(tried);
});

const now = ["As it is now", "One more kit"];
const person = "One more person in a round";

test.each<[string, Parameters<typeof unitWith>[0], string[]]>([
	["in rounds", {}, [...now, person, "One more round, at 02:00"]],
	["after each use there are no rounds", { reprocessing: "after_each_use" }, [...now, person]],
	[
		"people that nobody can count",
		{ workers_per_round: "many" },
		[...now, "One more round, at 02:00"],
	],
])("what could be more of: %s", (_, settings, names) => {
	const found = changesOf({ plan_days: 1, ...settings }).filter(({ oneOfMany }) => !oneOfMany);
	expect(found.map(({ name }) => name)).toEqual(names);
	expect(found.map(({ moreKits }) => moreKits)).toEqual(names.map((_name, at) => Number(at === 1)));
});

test("one more person, and one more round in the longest gap", () => {
	const [, , person, round] = changesOf({ plan_days: 1, workers_per_round: 2 });
	expect(person && valueIn(person.unit.read.settings.workers_per_round)).toBe(3);
	expect(round && valueIn(round.unit.timetable.starts)).toEqual([120, 420, 840, 1260]);
});

test("the column's help and the manual name the limits", () => {
	const { rounds, timesKinds, timesKindsOfTwo } = MOST_ROUNDS_MOVED;
	const manual = readFileSync("docs/manual/kits-and-rounds.md", "utf8");
	for (const limit of [
		`with more than ${rounds} rounds a day, or more than ${timesKinds} rounds times kinds, `,
		`with more than ${timesKindsOfTwo} rounds times kinds none`,
	]) {
		expect(leversSheet.columns.change.help).toContain(limit);
		expect(manual).toContain(limit);
	}
});
