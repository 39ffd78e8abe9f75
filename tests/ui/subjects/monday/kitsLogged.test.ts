import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { kitsLogged } from "../../../../src/ui/subjects/monday/daysStep.ts";
import { smallUnit } from "../../../core/smallUnit.ts";

// docs/manual/today-and-monday.md: blank kits used follow from Kits used; the column “By the log” shows what would.
test("the kits of a day by the log are its lines of kits used and opened, whatever the register says", () => {
	const { state } = new Store(
		smallUnit({
			"records.csv": `date,births,kits_used
				2027-02-20,6,3
				2027-02-21,6,0
				2027-02-22,6,
				2027-02-23,6,2`,
			"uses.csv": `at,kit,what
				2027-02-21 09:00,A,used
				2027-02-21 11:00,B,opened
				2027-02-22 09:00,A,used
				2027-02-23 03:00,,none_ready`,
		}),
	);
	const logged = (day: number) => kitsLogged(state, `2027-02-${day}`);
	expect([20, 21, 22, 23].map(logged)).toEqual([undefined, 2, 1, 0]);
});
