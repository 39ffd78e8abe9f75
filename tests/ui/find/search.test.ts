import { beforeAll, describe, expect, test, vi } from "vitest";
import { withTexts } from "../../../src/core/edit/withTexts.ts";
import { whereWords } from "../../../src/ui/find/findable.ts";
import { MOST_HITS, type Search, search } from "../../../src/ui/find/search.ts";
import { settingKeys, settingTexts } from "../../../src/ui/grid/settingsGrid.ts";
import { demoWorkbook } from "../../../src/ui/state/demoWorkbook.ts";
import { Store } from "../../../src/ui/state/store.ts";

beforeAll(() => {
	vi.stubGlobal("window", { innerWidth: 1366 });
	return () => vi.unstubAllGlobals();
});

const demo = () => new Store(demoWorkbook());

async function found(store: Store, words: string, everySheet = false): Promise<Search> {
	const options = { everySheet, pause: async () => {}, stopped: () => false };
	let last: Search | undefined;
	for await (const answer of search(store.state, words, options)) last = answer;
	if (!last) throw new Error("no answer");
	return last;
}
const listed = ({ hits }: Search) => hits.map((hit) => `${whereWords(hit)}: ${hit.text}`);

describe("searching the workbook", () => {
	test("typed cells by line and column, whatever capitals and accents", async () => {
		const store = demo();
		const text = "Masque n° 1 fêlé à l’embout";
		store.edit(withTexts(store.state.workbook, "kits.csv", [{ row: 1, column: "note", text }]));
		const answer = await found(store, "FELE");
		expect(listed(answer)).toContain(`Kits of the unit, line 3, Note: ${text}`);
		expect(listed(await found(store, "l'embout"))).toEqual([
			`Kits of the unit, line 3, Note: ${text}`,
		]);
		expect(answer.hits.find((hit) => hit.text === text)?.place).toEqual({
			file: "kits.csv",
			line: 3,
			column: "note",
		});
	});

	test("computed cells by the first cell of their row", async () => {
		const answer = await found(demo(), "light the stove");
		expect(listed(answer).join()).toMatch(/Start tonight, \w+ \d+ \w+, What: Light the stove/);
		expect(listed(await found(demo(), "2027-03-01"))).toContain(
			"The plan, day by day, Date: Mon 1 Mar",
		);
		expect(answer.done).toBe(true);
		expect(answer.left).toEqual([]);
	});

	test("column names, also those the sheet does not know, and sheets", async () => {
		const store = demo();
		const own = [{ row: 0, column: "Étagère", text: "7" }];
		store.edit(withTexts(store.state.workbook, "lots.csv", own));
		expect(listed(await found(store, "etagere"))).toContain("Lots in the store, column: Étagère");
		expect(listed(await found(store, "lots in the store"))).toContain(
			"Lots in the store, sheet: What is on the shelf or on the way, lot by lot.",
		);
	});

	test("settings by name and key, with the default where none is typed; problems by their words", async () => {
		const store = demo();
		expect(listed(await found(store, "plan_days"))).toContain(
			"Settings of the unit, Days in the plan: 7 days",
		);
		const row = settingKeys(store.state).indexOf("plan_days");
		const texts = settingTexts(store.state, [{ row, column: 1, text: "many weeks" }]);
		store.edit(withTexts(store.state.workbook, "unit.csv", texts));
		const problem = (await found(store, "many weeks")).hits.find(
			({ column }) => column === "problem",
		);
		expect(problem?.place.file).toBe("unit.csv");
	});

	test("a number is found with and without its thin spaces", async () => {
		const plain = await found(demo(), "1660");
		expect(plain.count).toBeGreaterThan(0);
		expect((await found(demo(), "1\u2009660")).count).toBe(plain.count);
	});

	test("what stands nowhere is not found", async () => {
		expect(await found(demo(), "zzzz")).toMatchObject({ hits: [], count: 0, done: true });
	});

	test("no more than a page of hits is listed, and all are counted", async () => {
		const answer = await found(demo(), "a");
		expect(answer.hits).toHaveLength(MOST_HITS);
		expect(answer.count).toBeGreaterThan(4 * MOST_HITS);
	});
});

describe("in a plan of a year", () => {
	const year = () => {
		const store = demo();
		const row = settingKeys(store.state).indexOf("plan_days");
		const texts = settingTexts(store.state, [{ row, column: 1, text: "366" }]);
		store.edit(withTexts(store.state.workbook, "unit.csv", texts));
		return store;
	};

	test("sheets nobody has looked at are named and not worked out, until asked for", async () => {
		const store = year();
		const plan = store.state.plan;
		const worked = vi.spyOn(plan.tables["water.csv"] as { rows: unknown }, "rows", "get");
		const answer = await found(store, "2028-02-29");
		expect(worked).not.toHaveBeenCalled();
		expect(answer.left).toContain("water.csv");
		expect(answer.left).not.toContain("day-plan.csv");
		const all = await found(store, "light the stove", true);
		expect(worked).toHaveBeenCalled();
		expect(all.count).toBeGreaterThan(300);
		// Once listed they are searched without asking, until the next change.
		expect(await found(store, "light the stove")).toMatchObject({ count: all.count, left: [] });
	});
});
