import { describe, expect, test } from "vitest";
import { countsWritten } from "../../../../src/core/edit/monday/countsWritten.ts";
import { entered } from "../../../../src/core/edit/store/entered.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { lotEntriesIn } from "../../../../src/ui/subjects/store/lotEntriesIn.ts";
import { contentOf } from "../../../core/contentOf.ts";
import { blank } from "../../../core/edit/enteredInStore.ts";
import { unitWith } from "../../../core/smallUnit.ts";

/** Lot L1 holds 10 L of 3.5 %, which does not fade: 7 L of 0.5 % take 1 L of it. */
const drawnFrom = (by: string) =>
	unitWith(
		{ product_drawn_by: by },
		{
			"rounds-done.csv": `date,start,kits,product,lot,litres
				2027-02-20,07:00,A,,L1,7
				2027-03-02,07:00,A,,L1,7`,
		},
	);
const entry = { ...blank, item: "liquid", lot: "L1" };
const entriesIn = lotEntriesIn({ today: undefined } as Parameters<typeof lotEntriesIn>[0]);

describe.each([
	["rounds", 9, 7.5],
	["journal", 10, 8.5],
])("product that leaves the store by %s", (by, books, onHand) => {
	const unit = drawnFrom(by);

	test("is counted against what the page of the stock holds", () => {
		const counts = [{ item: "liquid", lot: "L1", quantity: "8.5" }];
		const written = countsWritten(unit, "2027-03-02", counts, "Esi", entriesIn);
		expect(written.ok && written.differences).toEqual([
			{ item: "liquid", lot: "L1", books, counted: 8.5 },
		]);
	});

	test("and what is on hand after an entry is what that page says", () => {
		const result = entered(unit, { ...entry, quantity: "8.5" }, entriesIn);
		if (!result.ok) throw new Error("not written");
		expect(result.done).toEqual({ kind: "count", books, onHand });
		const shown = contentOf(plan(result.workbook), "stock.csv", "lot", "on_hand");
		expect(shown.find(([lot]) => lot === "L1")?.[1]).toBe(onHand);
	});
});
