import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { codesOf, rowsOf } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const FILE = "levers.csv";
const leversOf = (workbook: Workbook) =>
	contentOf(plan(workbook), FILE, "change", "kits", "unmet_per_1000_uses", "avoided_per_1000_uses");
const rounds = (...starts: string[]) => ["start,label", ...starts.map((s) => `${s},`)].join("\n");
const plain = "step,basis,minutes,hands_on\nsoak,load,20,no\nall else,round,219,yes";

describe("the changes of the small unit", () => {
	const rows = leversOf(smallUnit());
	const [now, ...others] = rows;
	const unmetWith = columnOf(plan(smallUnit()), "kit-cover.csv", "unmet_per_1000_uses");

	test("now is kit cover's row of the kits in service; one more kit is the next row", () => {
		expect(now).toEqual(["As it is now", 3, unmetWith[2], null]);
		const more = others.find(([change]) => change === "One more kit");
		expect(more?.slice(0, 3)).toEqual(["One more kit", 4, unmetWith[3]]);
	});

	test("what is avoided is the difference to now, the most first", () => {
		const avoided = others.map(([, , , spared]) => Number(spared));
		expect(avoided).toEqual(others.map(([, , unmet]) => Number(now?.[2]) - Number(unmet)));
		expect(avoided).toEqual([...avoided].sort((a, b) => b - a));
	});

	test("where nothing is lacking a change avoids 0, which is known, and no dash; other hours are not tried", () => {
		const avoided = leversOf(unitWith({ births_per_day: 0 })).map(([, , , spared]) => spared);
		expect(avoided).toEqual([null, 0, 0, 0]);
	});

	test("one more round comes into the middle of the longest gap", () => {
		expect(others.map(([change]) => change)).toContain("One more round, at 02:00");
	});

	test("of the other hours for a round only the best is shown, and no other hour is better", () => {
		const moved = others.filter(([change]) => /instead$/.test(String(change)));
		expect(moved).toHaveLength(1);
		const [, from = "", to = ""] =
			/The (.*) round at (.*) instead/.exec(String(moved[0]?.[0])) ?? [];
		const starts = ["07:00", "14:00", "21:00"];
		expect(starts).toContain(from);
		const unmetAt = (table: string) => Number(leversOf(smallUnit({ "rounds.csv": table }))[0]?.[2]);
		expect(unmetAt(rounds(...starts.map((s) => (s === from ? to : s))))).toBe(moved[0]?.[2]);
		for (const start of starts)
			for (const hours of [-3, -2, -1, 1, 2, 3]) {
				const hour = (Number(start.slice(0, 2)) + hours + 24) % 24;
				const at = `${String(hour).padStart(2, "0")}:00`;
				const unmet = unmetAt(rounds(...starts.map((s) => (s === start ? at : s))));
				expect(unmet).toBeGreaterThanOrEqual(Number(moved[0]?.[2]) - 1e-12);
			}
	});

	test("each change is what the plan says of the unit so changed", () => {
		const [, , person] = others.find(([c]) => c === "One more person in a round") ?? [];
		expect(leversOf(unitWith({ workers_per_round: 2 }))[0]?.[2]).toBe(person);
		const [, , round] = others.find(([c]) => c === "One more round, at 02:00") ?? [];
		const four = rounds("02:00", "07:00", "14:00", "21:00");
		expect(leversOf(smallUnit({ "rounds.csv": four }))[0]?.[2]).toBe(round);
	});
});

describe("a change that does not fit is not proposed", () => {
	test("neither a round between, nor another hour, where rounds follow each other at once", () => {
		const sixRounds = rounds("01:00", "05:00", "09:00", "13:00", "17:00", "21:00");
		const made = plan(smallUnit({ "rounds.csv": sixRounds, "steps.csv": plain }));
		expect(made.made).toBe(true);
		expect(new Set(columnOf(made, FILE, "change"))).toEqual(
			new Set(["As it is now", "One more kit", "One more person in a round"]),
		);
		for (const row of rowsOf(made, FILE))
			for (const cell of Object.values(row)) expect(cell.outcome.ok).toBe(true);
	});

	test("nor a round between for which only the fewest kits would be done in time", () => {
		// Six hours are enough for two kits, 400 minutes that three take are not.
		const changes = (births: number) =>
			columnOf(
				plan(
					unitWith(
						{ births_per_day: births },
						{
							"rounds.csv": rounds("07:00", "19:00"),
							"steps.csv":
								"step,basis,minutes,hands_on\nsoak,load,20,no\nmake ready,round,200,yes\nwash,kit,60,yes",
						},
					),
				),
				FILE,
				"change",
			);
		expect(changes(10)).toContain("One more round, at 13:00");
		expect(changes(50)).toContain("One more kit");
		expect(changes(50)).not.toContain("One more round, at 13:00");
	});

	test("nor an hour at which a round starts already", () => {
		const hourly = Array.from({ length: 24 }, (_, h) => `${String(h).padStart(2, "0")}:00`);
		const quick = "step,basis,minutes,hands_on\nsoak,load,20,no";
		const changes = leversOf(smallUnit({ "rounds.csv": rounds(...hourly), "steps.csv": quick }));
		expect(changes.map(([change]) => change)).not.toContain(expect.stringMatching(/instead/));
		expect(changes.filter(([change]) => /instead/.test(String(change)))).toEqual([]);
	});

	test("where the rounds as they are do not fit, another hour at which they would is shown", () => {
		const tight = rounds("07:00", "08:30", "21:00");
		const now = leversOf(smallUnit({ "rounds.csv": tight }));
		expect(now[0]).toEqual(["As it is now", 3, undefined, null]);
		const moved = now.find(([change]) => /instead/.test(String(change)));
		expect(Number(moved?.[2])).toBeGreaterThan(0);
	});
});

test("what would make it worse has no figure of what it avoids", () => {
	const rows = leversOf(smallUnit({ "rounds.csv": rounds("06:00", "14:00", "22:00") }));
	for (const [, , unmet, avoided] of rows.slice(1))
		expect(avoided === null).toBe(Number(unmet) > Number(rows[0]?.[2]));
});

test("after each use there are no rounds to change", () => {
	const changes = leversOf(unitWith({ reprocessing: "after_each_use" }));
	expect(changes.map(([change]) => change)).toEqual([
		"As it is now",
		"One more kit",
		"One more person in a round",
	]);
});

const hoursTried = (settings: Record<string, number>, kits: number) => {
	const list = Array.from({ length: kits }, (_, k) => `K${k},bag set,in_service,,`);
	const files = { "kits.csv": ["kit,kind,status,ready_since,note", ...list].join("\n") };
	const rows = leversOf(unitWith(settings, files));
	return {
		unmet: Number(rows[0]?.[2]),
		hours: rows.filter(([change]) => /instead$/.test(String(change))).length,
	};
};

test("other hours are tried only where there are kits, and 0.001 of 1,000 times none is ready", () => {
	expect(hoursTried({}, 0)).toEqual({ unmet: 1000, hours: 0 });
	const most = 12;
	const byKits = Array.from({ length: most }, (_, k) => hoursTried({}, k + 1));
	for (const { unmet, hours } of byKits) expect(hours).toBe(unmet >= 0.001 ? 1 : 0);
	expect(new Set(byKits.map(({ hours }) => hours)).size).toBe(2);
});

test("where nobody can read how pieces are treated every change waits", () => {
	const treatments = "kind,piece,method,note\nbag set,bag,hot water,";
	const rows = rowsOf(plan(smallUnit({ "treatments.csv": treatments })), FILE);
	expect(codesOf(rows[0]?.unmet_per_1000_uses)).toEqual(["bad-cell"]);
});

test("one by one, kits that an autoclave has for a day longer are missing more often", () => {
	const unmet = (hours: number) =>
		leversOf(
			unitWith({
				reprocessing: "after_each_use",
				method: "autoclave",
				autoclave_turnaround_hours: hours,
			}),
		)[0]?.[2];
	expect(Number(unmet(48))).toBeGreaterThan(Number(unmet(24)));
});
