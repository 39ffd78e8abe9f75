import { expect, test } from "vitest";
import { rowsOf } from "../../../../src/core/plan/rowsOf.ts";
import { orderSheet } from "../../../../src/core/sheets/order.ts";
import { demoWorkbook } from "../../../../src/ui/state/demoWorkbook.ts";
import { wordIn } from "../../../../src/ui/state/numberIn.ts";
import { type State, Store } from "../../../../src/ui/state/store.ts";
import { storekeeperLists } from "../../../../src/ui/subjects/store/storekeeperLists.ts";
import { shortList } from "../../../../src/ui/subjects/today/shortList.ts";
import { withTextDocument } from "../../textDocument.ts";

withTextDocument();

/** The demo, which begins on this day, with so many days between counts. */
const FIRST = "2027-03-01";
function demoWith(every: string): State {
	const { tables } = demoWorkbook();
	const { header = [], rows = [] } = tables["unit.csv"] ?? {};
	const others = rows.filter(([key]) => key !== "count_every_days");
	const unit = { header, rows: [...others, ["count_every_days", every]] };
	return new Store({ tables: { ...tables, "unit.csv": unit } }).state;
}

/** What each of the four places says. */
function said(state: State) {
	const list = storekeeperLists(state).find(({ word }) => word === "COUNT");
	const items = list?.lines[0]?.more.split("; ").map((words) => words.replace(/ \([^(]*\)$/, ""));
	const remarked = rowsOf(state.plan, orderSheet).filter((row) =>
		wordIn(row.remark).includes("days ago: count it."),
	);
	return {
		storekeeper: items ?? [],
		advised: state.plan.problems
			.filter(({ code }) => code === "count-too-old")
			.map(({ message }) => message.slice(0, message.indexOf(": last counted"))),
		remarked: remarked.map((row) => wordIn(row.item)),
		today: shortList(state, FIRST)?.textContent?.match(/To count (.*?): counted too long ago/)?.[1],
	};
}

// docs/manual/stock-and-orders.md: said once for each item that the plan uses, and on the storekeeper's page under Count.
test("the storekeeper's page, today, the order's remarks and the advice name the same items", () => {
	for (const every of ["14", "31"]) {
		const { storekeeper, advised, remarked, today } = said(demoWith(every));
		expect(storekeeper.length).toBeGreaterThan(0);
		expect(advised).toEqual(storekeeper);
		expect(remarked).toEqual(storekeeper);
		for (const item of storekeeper.slice(0, 3)) expect(today).toContain(item);
	}
});

test("where nobody can read how often is meant, none of them is counted too long ago", () => {
	expect(said(demoWith("often"))).toEqual({
		storekeeper: [],
		advised: [],
		remarked: [],
		today: undefined,
	});
});
