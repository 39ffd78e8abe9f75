import { expect, test } from "vitest";
import { withCopyKept } from "../../../../src/core/edit/withCopyKept.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { type State, Store } from "../../../../src/ui/state/store.ts";
import {
	type Compared,
	comparedFigures,
} from "../../../../src/ui/subjects/compare/comparedFigures.ts";
import { differenceOf } from "../../../../src/ui/subjects/compare/difference.ts";
import { differingSettings } from "../../../../src/ui/subjects/compare/differingSettings.ts";
import { hasAnswer, NOW, sideOf } from "../../../../src/ui/subjects/compare/side.ts";
import { whatIfHeadline } from "../../../../src/ui/subjects/compare/whatIfWords.ts";
import { smallUnit, unitWith } from "../../../core/smallUnit.ts";

const ONE_ROUND = { "rounds.csv": "start,label\n08:00,only" };

/** A workbook on the screen that has a copy of another one's settings and rounds. */
function stateWith(name: string, copied: Workbook, now: Workbook): State {
	const kept = withCopyKept(copied, name).tables["kept-settings.csv"];
	return new Store({ tables: { ...now.tables, "kept-settings.csv": kept as never } }).state;
}

function figure(figures: readonly Compared[], label: string): Compared {
	const found = figures.find((each) => each.label === label);
	if (!found) throw new Error(`no figure ${label}`);
	return found;
}

test("fewer rounds: more needs find no kit ready, which is worse; seen from the other side, better", () => {
	const state = stateWith("three", smallUnit(), smallUnit(ONE_ROUND));
	const [now, three] = [sideOf(state, NOW), sideOf(state, "three")];
	const unmet = (left: State, right: State) =>
		differenceOf(figure(comparedFigures(left, right), "Times no kit is ready when needed"));
	expect(unmet(three.state, now.state)).toMatchObject({ verdict: "worse" });
	expect(unmet(three.state, now.state).text).toMatch(/^\+/);
	expect(unmet(now.state, three.state)).toMatchObject({ verdict: "better" });
	expect(unmet(now.state, three.state).text).toMatch(/^−/);
});

test("nothing but unmet needs is called better or worse", () => {
	const state = stateWith(
		"other",
		smallUnit(),
		unitWith({ wipe_solution_litres: 2, spare_kits: 4 }, ONE_ROUND),
	);
	const [now, other] = [sideOf(state, NOW), sideOf(state, "other")];
	const figures = comparedFigures(now.state, other.state);
	const judged = figures.filter((each) => differenceOf(each).verdict !== "");
	expect(judged.map(({ label }) => label)).toEqual(["Times no kit is ready when needed"]);
	expect(figures.filter((each) => /^[+−]/.test(differenceOf(each).text)).length).toBeGreaterThan(5);
});

test("the difference is that of the numbers shown, which are rounded up where they are set aside", () => {
	const state = stateWith("fuller", unitWith({ soak_fill_litres: 5.04 }), smallUnit());
	const [now, fuller] = [sideOf(state, NOW), sideOf(state, "fuller")];
	const solution = figure(comparedFigures(now.state, fuller.state), "Chlorine solution");
	const [before, after] = [solution.left, solution.right].map((each) =>
		each?.outcome.ok ? Math.ceil(Number(each.outcome.value) * 10 - 1e-9) / 10 : Number.NaN,
	);
	expect(differenceOf(solution).text).toBe(`+${((after ?? 0) - (before ?? 0)).toFixed(1)}`);
});

test("settings that differ are named with both values, and so are the rounds; the days planned are not", () => {
	const copied = unitWith({ delivery_beds: 5, plan_start: "2026-01-01", plan_days: 3 }, ONE_ROUND);
	const state = stateWith("five", copied, smallUnit());
	const differing = differingSettings(sideOf(state, NOW).state, sideOf(state, "five").state);
	expect(differing.map(({ label, left, right }) => [label, left, right])).toEqual([
		["Delivery beds", "2", "5"],
		["Rounds of a day", "07:00 morning, 14:00 afternoon, 21:00 night", "08:00 only"],
	]);
});

test("a value written another way, or left blank for its default, is no difference", () => {
	const state = stateWith("same", unitWith({ delivery_beds: "2.0", spare_kits: "1" }), smallUnit());
	expect(differingSettings(state, sideOf(state, "same").state)).toEqual([]);
});

test("both sides are over the days of the workbook", () => {
	const state = stateWith("old", unitWith({ plan_start: "2026-01-01", plan_days: 3 }), smallUnit());
	const days = (of: State) => of.plan.tables["day-plan.csv"]?.rows.length;
	expect(days(sideOf(state, "old").state)).toBe(7);
});

test("the title says which side is safer and by how much, and what it takes in kits", () => {
	const state = stateWith("many beds", unitWith({ delivery_beds: 7 }), smallUnit());
	const [now, beds] = [sideOf(state, NOW), sideOf(state, "many beds")];
	expect(whatIfHeadline(now, beds)).toMatch(
		/^Both are as safe: [\d.]+ of 1\u202f000 .* “many beds” needs 8 kits, \d kits? more$/,
	);
	expect(whatIfHeadline(beds, now)).toMatch(/needs \d kits, \d kits? fewer$/);
	expect(whatIfHeadline(now, now)).toMatch(/Each needs \d kits$/);
	const slow = stateWith(
		"slow",
		unitWith({ workers_per_round: 1 }),
		unitWith({ workers_per_round: 3 }),
	);
	const [three, one] = [sideOf(slow, NOW), sideOf(slow, "slow")];
	for (const sides of [
		[three, one],
		[one, three],
	] as const) {
		const [, , fewer = 0, more = 0] =
			/^(.*) is safer: ([\d.]+) of 1\u202f000 .* other side ([\d.]+)\./.exec(
				whatIfHeadline(...sides),
			) ?? [];
		expect(whatIfHeadline(...sides)).toMatch(/^The workbook as it is now is safer/);
		expect(Number(fewer)).toBeLessThan(Number(more));
	}
});

test("a side without an answer says why, and leads to the copy's own row", () => {
	const state = stateWith("odd", unitWith({ delivery_beds: "three" }), smallUnit());
	const odd = sideOf(state, "odd");
	expect(hasAnswer(odd)).toBe(false);
	expect(whatIfHeadline(sideOf(state, NOW), odd)).toContain("No answer yet for “odd”");
	const [trouble] = odd.troubles;
	expect(trouble?.message).toContain("three");
	const place = odd.placeOf(trouble as never);
	expect(place.file).toBe("kept-settings.csv");
	const row = state.workbook.tables["kept-settings.csv"]?.rows[(place.line ?? 0) - 2];
	expect(row).toEqual(["odd", "setting", "delivery_beds", "three"]);
	expect(hasAnswer(sideOf(state, NOW))).toBe(true);
});

test("a copy with a row that cannot be understood has no answer, although the rest would do", () => {
	const rows = "name,of,key,value\nhalf,setting,pots,3\nhalf,seting,pots,4";
	const { state } = new Store(smallUnit({ "kept-settings.csv": rows }));
	expect(hasAnswer(sideOf(state, "half"))).toBe(false);
});

test("a default that a copy leaves blank leads to the copy too", () => {
	const state = stateWith("plain", smallUnit(), unitWith({ delivery_beds: 4 }));
	const plain = sideOf(state, "plain");
	const place = plain.placeOf({ file: "unit.csv", line: null, column: "delivery_beds" });
	expect(place.file).toBe("kept-settings.csv");
});
