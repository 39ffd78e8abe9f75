import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { wantedLabels } from "../../../../src/ui/subjects/labels/wantedLabels.ts";
import { unitWith } from "../../../core/smallUnit.ts";
import { textOf, withTextDocument } from "../../textDocument.ts";

withTextDocument();

const CHECKS =
	"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note";

/** The small unit's kits A (ready since 27 February) to C, seven days ready; D is out of service. */
function labelsWith(files: Record<string, string>) {
	const { state } = new Store(unitWith({}, files));
	const labels = wantedLabels(state, {
		solutions: 0,
		mix: 0,
		made: undefined,
		rinseSets: 0,
		perKit: 1,
		done: undefined,
	});
	return labels.map((label) => textOf([label]));
}

const uses = (...lines: string[]) => ["at,kit,what,by,note", ...lines].join("\n");

test("each label says how its kit stands, and only a ready one that it is disinfected, complete, tested", () => {
	const [a, b, c, ...more] = labelsWith({
		"uses.csv": uses("2027-03-01 08:00,B,used,,"),
		"checks.csv": `${CHECKS}\n2027-02-28 11:00,C,4,yes,yes,yes,yes,yes,,`,
	});
	expect(a).toContain("disinfected, complete, tested");
	expect(a).toMatch(/Done on Sat 27 Feb 2027 USE BY Sat 6 Mar 2027/);
	expect(b).toContain("Used: to be reprocessed. DO NOT USE.");
	expect(c).toContain("DO NOT USE: incomplete.");
	expect(c).toContain("Why: 1 of 5 pieces missing");
	for (const apart of [b, c]) {
		expect(apart).toContain("Set apart by");
		expect(apart).not.toContain("tested");
		expect(apart).not.toContain("USE BY");
	}
	expect(more).toEqual([]);
});

test("a kit whose days are over waits for a round, used or not", () => {
	const [a] = labelsWith({
		"uses.csv": uses("2027-03-01 08:00,B,used,,"),
		"kits.csv":
			"kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-10,\nB,bag set,in_service,,",
	});
	expect(a).toContain("To be reprocessed. DO NOT USE. Why: ready only until Wed 17 Feb");
});

test("a kit that fails a test gets no label of a ready one", () => {
	const [a] = labelsWith({ "checks.csv": `${CHECKS}\n2027-02-28 11:00,A,5,yes,no,yes,yes,yes,,` });
	expect(a).toContain("DO NOT USE: in repair.");
});

test("where nothing is recorded a person ticks how the kit stands, and the dates are written by hand", () => {
	for (const label of labelsWith({})) {
		expect(label).toMatch(/Tick what is true; nothing ticked: do not use\./);
		expect(label).toMatch(/Done on USE BY/);
	}
});
