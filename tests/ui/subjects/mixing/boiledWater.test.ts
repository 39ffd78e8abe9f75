import { expect, test } from "vitest";
import { actsBetween } from "../../../../src/core/plan/today/actsBetween.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { type State, Store } from "../../../../src/ui/state/store.ts";
import { wantedLabels } from "../../../../src/ui/subjects/labels/wantedLabels.ts";
import { type Mix, mixesOfFirstDay } from "../../../../src/ui/subjects/mixing/mix.ts";
import { mixingPage } from "../../../../src/ui/subjects/mixing/mixingPage.ts";
import { mixingRules, mixSteps } from "../../../../src/ui/subjects/mixing/mixSteps.ts";
import { wallTableOut } from "../../../../src/ui/subjects/mixing/wallTableOut.ts";
import { dayRounds } from "../../../../src/ui/subjects/rounds/dayRounds.ts";
import { needsOfDay } from "../../../../src/ui/subjects/rounds/needsOfDay.ts";
import { actList } from "../../../../src/ui/subjects/today/actList.ts";
import { unitWith } from "../../../core/smallUnit.ts";
import { textOf, withTextDocument } from "../../textDocument.ts";

withTextDocument();

const DAY = "2027-03-01";
const from = { date: DAY, minutes: 0 };
const until = { date: DAY, minutes: 1439 };

/** Wherever a solution is measured out, by the name of the place. */
const places: Record<string, (state: State) => string> = {
	"Mixing, step by step": (state) =>
		mixSteps(mixesOfFirstDay(state)[0] as Mix, mixingRules(state)).join(" "),
	"its answer": (state) => mixingPage.headline?.(state) ?? "",
	Today: (state) => {
		const acts = actsBetween(state.plan, readWorkbook(state.workbook), from, until);
		const mixes = acts.filter(({ kind }) => kind === "mix");
		return textOf([actList(mixes, { from, isNow: true, waiting: [] })]);
	},
	"the wall table": (state) => textOf(wallTableOut.pages(state)),
	"the work sheet": (state) => needsOfDay(state, DAY, dayRounds(state, DAY)).flat().join(" "),
	"the label": (state) =>
		textOf(
			wantedLabels(state, {
				solutions: 1,
				rinseSets: 0,
				perKit: 0,
				mix: 0,
				made: undefined,
				done: undefined,
			}),
		),
};

function said(place: string, settings: Record<string, string | number>, tables = {}): string {
	const { state } = new Store(unitWith(settings, tables));
	return places[place]?.(state).replace(/\s+/g, " ") ?? "";
}

// 0.1 % is offered only with boiled water, and what is said of mixing says so (design/methods.md).
test.each(Object.keys(places))(
	"the water of a solution is boiled where a unit says so: %s",
	(place) => {
		const boiled = said(place, { solution_water: "boiled", target_strength_pct: 0.1 });
		expect(boiled).toMatch(/boiled,? (and )?cooled/);
		expect(boiled).not.toMatch(/cold water|water first, cold|L of water/i);
		const tap = said(place, {});
		expect(tap).toMatch(/of (cold )?water|water first, cold/i);
		expect(tap).not.toMatch(/boiled and cooled|of boiled|for the solution/);
	},
);

test("the rinse buckets are those of the loads, whatever else the boiled water is for", () => {
	const on = (settings: object) => said("the work sheet", { bucket_fill_litres: 5, ...settings });
	// One load through three buckets of 5 L; a preparation of 5.5 L besides.
	expect(on({})).toContain("Boiled, cooled water: 15 L (rinse buckets: 3 × 5 L).");
	expect(on({ solution_water: "boiled" })).toContain(
		"Boiled, cooled water: 20.5 L (rinse buckets: 3 × 5 L; for the solution: 5.5 L).",
	);
});

test("without a product the work sheet leaves room for the water first, then the product", () => {
	const none = said("the work sheet", {}, { "chlorine.csv": "product,form,strength,in_use" });
	expect(none).toMatch(/Solution: _+ L of water, then _+ of product/);
});
