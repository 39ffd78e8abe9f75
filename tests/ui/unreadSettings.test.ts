import { describe, expect, test } from "vitest";
import { stepsEntry } from "../../src/core/edit/begin/stepsEntry.ts";
import { withTexts } from "../../src/core/edit/withTexts.ts";
import { kitsOn } from "../../src/core/plan/today/kitsOn.ts";
import { readWorkbook } from "../../src/core/read/readWorkbook.ts";
import { unitSheet } from "../../src/core/sheets/unit.ts";
import type { PrintOut } from "../../src/ui/page.ts";
import { demoWorkbook } from "../../src/ui/state/demoWorkbook.ts";
import { type State, Store } from "../../src/ui/state/store.ts";
import { printedSetting } from "../../src/ui/state/unitSetting.ts";
import { kitRegisterPage } from "../../src/ui/subjects/kits/kitRegisterPage.ts";
import { wantedLabels } from "../../src/ui/subjects/labels/wantedLabels.ts";
import { mixesOfFirstDay } from "../../src/ui/subjects/mixing/mix.ts";
import { mixingRules, mixSteps } from "../../src/ui/subjects/mixing/mixSteps.ts";
import { wallTableOut } from "../../src/ui/subjects/mixing/wallTableOut.ts";
import { oneKitSteps } from "../../src/ui/subjects/rounds/oneKitSteps.ts";
import { runSheetPrintOuts } from "../../src/ui/subjects/rounds/runSheetPrintOuts.ts";
import { todayHeadline } from "../../src/ui/subjects/today/todayHeadline.ts";
import { boilingSheetOut } from "../../src/ui/subjects/water/boilingSheetOut.ts";
import { weekWords } from "../../src/ui/subjects/week/weekWords.ts";
import { textOf, withTextDocument } from "./textDocument.ts";

withTextDocument();

/** The demo with other texts as settings. */
function demoWith(texts: Readonly<Record<string, string>>): State {
	const workbook = demoWorkbook();
	const rows = workbook.tables[unitSheet.file]?.rows ?? [];
	const keys = rows.map(([key]) => key);
	const changed = Object.entries(texts).flatMap(([key, text], at) => {
		const found = keys.indexOf(key);
		const row = found >= 0 ? found : rows.length + at;
		return [
			{ row, column: "key", text: key },
			{ row, column: "value", text },
		];
	});
	return new Store(withTexts(workbook, unitSheet.file, changed)).state;
}
const paper = (out: PrintOut | undefined, state: State) => textOf(out?.pages(state) ?? []);
const made = { date: "2027-03-01", minutes: 7 * 60 };
const labels = (
	state: State,
	wanted: { solutions?: number; rinseSets?: number; perKit?: number },
) =>
	wantedLabels(state, {
		solutions: 0,
		rinseSets: 0,
		perKit: 0,
		...wanted,
		mix: 0,
		made,
		done: "2027-02-27",
	});
const why = (found: string) => new RegExp(`Write it by hand: [^.]*"${found}" was found`);

test("a setting that can be read is printed, one that cannot says why", () => {
	expect(printedSetting(demoWith({ solution_life_hours: "8" }), "solution_life_hours")).toEqual({
		value: 8,
		why: "",
	});
	const unread = printedSetting(demoWith({ solution_life_hours: "8 h" }), "solution_life_hours");
	expect(unread.value).toBeUndefined();
	expect(unread.why).toMatch(why("8 h"));
});

describe("how long a solution may be used", () => {
	const read = demoWith({ solution_life_hours: "8" });
	const unread = demoWith({ solution_life_hours: "8 h" });
	test("on its label", () => {
		expect(textOf(labels(read, { solutions: 1 }))).toMatch(
			/DISCARD at the end of this round At the latest Mon 1 Mar.* 15:00, 8 h after/,
		);
		const label = textOf(labels(unread, { solutions: 1 }));
		expect(label).toMatch(
			/Made at Mon 1 Mar.* 07:00 DISCARD at the end of this round At the latest ____ h after/,
		);
		expect(label).toMatch(why("8 h"));
		expect(label).not.toContain("24 h after");
	});
	test("on the wall table", () => {
		expect(paper(wallTableOut, read)).toContain("Discard after 8 hours at most.");
		expect(paper(wallTableOut, unread)).toMatch(
			/Discard after ____ hours at most\. Write it by hand/,
		);
	});
	test("in the steps of mixing", () => {
		const [mix] = mixesOfFirstDay(unread);
		if (!mix) throw new Error("the demo mixes nothing");
		expect(mixSteps(mix, mixingRules(unread))[3]).toMatch(
			/date, time mixed, discard time\. Write it by hand/,
		);
	});
});

test("the strength of the soak on a label", () => {
	const label = textOf(labels(demoWith({ target_strength_pct: "half" }), { solutions: 1 }));
	expect(label).toMatch(/____ % ______ mg\/L/);
	expect(label).toMatch(why("half"));
});

test("how many rinse buckets there are, and how cool they must be", () => {
	const read = labels(demoWith({ rinse_buckets: "2", rinse_below_c: "30" }), { rinseSets: 2 });
	expect(read).toHaveLength(4);
	expect(textOf(read)).toMatch(/Rinse bucket 2 of 2 .*Order: 1 then 2.*at or below 30 °C/);
	const unread = labels(demoWith({ rinse_buckets: "three", rinse_below_c: "hand-warm" }), {
		rinseSets: 2,
	});
	expect(unread).toHaveLength(2);
	expect(textOf(unread)).toMatch(/Rinse bucket ____ of ____ .*Order: ____.*at or below ____ °C/);
	expect(textOf(unread)).toMatch(why("three"));
	expect(textOf(unread)).toMatch(why("hand-warm"));
});

test("how cool the water must be, on the boiling sheet", () => {
	expect(paper(boilingSheetOut, demoWith({ rinse_below_c: "30" }))).toContain("when it is 30 °C");
	const unread = paper(boilingSheetOut, demoWith({ rinse_below_c: "hand-warm" }));
	expect(unread).toMatch(/Rinse when it is ____ °C or cooler/);
	expect(unread).toMatch(why("hand-warm"));
	expect(unread).not.toContain("37");
});

test("how long a kit stays ready, on its label", () => {
	const unread = textOf(labels(demoWith({ ready_life_days: "a week" }), { perKit: 1 }).slice(0, 1));
	expect(unread).toMatch(/USE BY .*After that day/);
	expect(unread).toMatch(why("a week"));
	// Nobody knows whether its days are over: who looks at it ticks what is true.
	expect(unread).toMatch(/Tick what is true/);
	expect(unread).not.toMatch(/kit: disinfected, complete, tested/);
});

test("which kits are ready, in the headlines of their page and of today", () => {
	const headlines = (state: State) => [
		kitRegisterPage.headline?.(state),
		todayHeadline(kitsOn(readWorkbook(state.workbook), "2027-03-01")),
	];
	expect(headlines(demoWith({}))).toEqual([
		"Use K1 next; 4 of 7 kits count",
		"3 kits are ready: use K1 next",
	]);
	expect(headlines(demoWith({ ready_life_days: "a week" }))).toEqual([
		"Which kits are ready is not known; 4 of 7 kits count",
		"Which kits are ready is not known: look at their labels",
	]);
});

test("the shortest soak and how often to descale, on the run sheet of one kit", () => {
	const state = (texts: Record<string, string>) =>
		demoWith({ reprocessing: "after_each_use", ...texts });
	const [out] = runSheetPrintOuts;
	const read = paper(out, state({ soak_minutes: "25", descale_every_rounds: "9" }));
	expect(read).toContain("(≥ 25 min)");
	expect(read).toContain("or every 9 kits");
	const unread = paper(out, state({ soak_minutes: "long", descale_every_rounds: "weekly" }));
	expect(unread).toContain("(≥ ____ min)");
	expect(unread).toMatch(why("long"));
	expect(unread).toContain("or every ____ kits");
	expect(unread).toMatch(why("weekly"));
});

test("without the number of people a kit's steps have no times", () => {
	const { steps, waitsFor } = oneKitSteps(demoWith({ workers_per_round: "all" }));
	expect(steps).toEqual([]);
	expect(waitsFor).toContain('"all" was found');
});

test("how sure the plan is, in the words over it", () => {
	expect(weekWords(demoWith({ plan_confidence: "0.9" }))).toContain("at least 90 of 100");
	const unread = weekWords(demoWith({ plan_confidence: "sure" }));
	expect(unread).toContain("at least ____ of 100");
	expect(unread).toMatch(why("sure"));
});

test("steps are not proposed with a soak that nobody chose", () => {
	const { workbook } = demoWith({ soak_minutes: "long" });
	const empty = { ...workbook, tables: { ...workbook.tables } };
	delete (empty.tables as Record<string, unknown>)["steps.csv"];
	expect(stepsEntry.write(empty, "")).toMatch(/"long" was found/);
});
