import { expect, test } from "vitest";
import { shownEntries } from "../../../../src/ui/subjects/begin/shownEntries.ts";
import { whatNext } from "../../../../src/ui/subjects/begin/whatNext.ts";
import { begun } from "../../../core/edit/begun.ts";
import { smallUnit, unitWith } from "../../../core/smallUnit.ts";

test("what makes the plan better goes from the list once it stands", () => {
	const first = whatNext(begun()).map(({ place }) => place.file);
	expect(first).toEqual([
		"lots.csv",
		"kits.csv",
		"unit.csv",
		"unit.csv",
		"records.csv",
		"unit.csv",
	]);
	expect(whatNext(smallUnit()).map(({ place }) => place.column)).toEqual([
		"boil_minutes_measured",
		"date",
		"target_strength_pct",
	]);
});

test("a unit of several kinds is asked for beds and spares of each, until they are given", () => {
	const files = (beds: string) => ({
		"kits.csv":
			"kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-27,\nB,other set,in_service,2027-02-27,",
		"kind-use.csv": `kind,uses_per_100_births,beds,spares\nbag set,10,${beds},1`,
	});
	const isAsked = (beds: string) =>
		whatNext(unitWith({}, files(beds))).some(({ place }) => place.file === "kind-use.csv");
	expect([isAsked(""), isAsked("2")]).toEqual([true, false]);
});

test("an entry is shown with the control that fits it, and with what a blank means", () => {
	const shown = Object.fromEntries(
		shownEntries.map(({ key, control, blank }) => [key, [control, blank]]),
	);
	expect(shown).toMatchObject({
		pots: ["text", "2"],
		plan_start: ["date", undefined],
		steps: ["proposal", undefined],
		"product-kind": ["choice", undefined],
	});
	expect(shown.delivery_beds?.[1]).toMatch(/^\d/);
});
