import { expect, test } from "vitest";
import { entered } from "../../../src/core/edit/store/entered.ts";
import type { StoreEntry } from "../../../src/core/edit/store/storeEntry.ts";
import { smallUnit } from "../smallUnit.ts";
import { blank, LOTS } from "./enteredInStore.ts";

const unit = () => smallUnit({ "lots.csv": LOTS });

function doneOf(entry: Partial<StoreEntry>) {
	const result = entered(unit(), { ...blank, ...entry });
	return result.ok ? result.done : undefined;
}

test.each<[string, Partial<StoreEntry>, unknown]>([
	["a count", { quantity: "130" }, { kind: "count", books: 140, onHand: 130 }],
	["an issue", { kind: "issue", quantity: "40" }, { kind: "issue", books: 140, onHand: 100 }],
	[
		"more issued than there is",
		{ kind: "issue", quantity: "150" },
		{ kind: "issue", books: 140, onHand: 0 },
	],
	["a loss", { kind: "loss", quantity: "40" }, { kind: "loss", books: 140, onHand: 100 }],
	["a receipt", { kind: "receipt", quantity: "5" }, { kind: "receipt", books: 140, onHand: 145 }],
	[
		"a lot that was on its way",
		{ kind: "receipt", item: "liquid", lot: "L2", quantity: "8" },
		{ kind: "arrival", ordered: 10 },
	],
	[
		"a lot that is new",
		{ kind: "receipt", lot: "G2", isNew: true, quantity: "5" },
		{ kind: "new_lot" },
	],
])("%s: what the books said, and what is on hand now", (_what, entry, done) => {
	expect(doneOf(entry)).toEqual(done);
});

test("what cannot be is refused where it stands, and the workbook is left alone", () => {
	const wrong = (entry: Partial<StoreEntry>) => {
		const result = entered(unit(), { ...blank, quantity: "1", ...entry });
		return result.ok ? [] : result.wrong.map(({ field }) => field);
	};
	expect(wrong({ quantity: "many" })).toEqual(["quantity"]);
	expect(wrong({ day: "" })).toEqual(["day"]);
	expect(wrong({ item: "", lot: "" })).toEqual(["item", "lot"]);
	expect(wrong({ lot: "G9" })).toEqual(["lot"]);
	expect(wrong({ isNew: true })).toEqual(["lot"]);
	expect(wrong({ item: "liquid", lot: "L2", kind: "issue" })).toEqual(["lot"]);
	expect(wrong({ isNew: true, lot: "N", expires: "soon" })).toEqual(["expires"]);
});
