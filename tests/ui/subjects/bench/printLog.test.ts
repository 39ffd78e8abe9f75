import { describe, expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { logPage } from "../../../../src/ui/subjects/bench/printLog.ts";
import { unitWith } from "../../../core/smallUnit.ts";
import { withTextDocument } from "../../textDocument.ts";

describe("the log for the bench", () => {
	withTextDocument();
	const SOAK = ["Soak in", "Soak out"];
	const MIXED = ["Product", "Lot", "Solution made", "Strength read"];
	const ALWAYS = ["Start", "Ended", "Descaled", "Done by", "Released by", "Note"];

	test.each([
		["chlorine", [...ALWAYS, ...MIXED, ...SOAK], []],
		["boiling", ALWAYS, SOAK],
	])("of a unit that goes by %s has the columns that it fills", (method, there, absent) => {
		const { state } = new Store(unitWith({ method }));
		const words = logPage(state).textContent ?? "";
		for (const column of there) expect(words).toContain(column);
		for (const column of absent) expect(words).not.toContain(column);
	});
});
