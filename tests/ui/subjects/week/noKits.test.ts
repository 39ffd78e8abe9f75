import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { weekHeadline } from "../../../../src/ui/subjects/week/weekHeadline.ts";
import { smallUnit } from "../../../core/smallUnit.ts";

test("a unit without a kit in service has none, not only 0", () => {
	const kits = "kit,kind,status,ready_since,note\nA,bag set,out_of_service,,";
	const { state } = new Store(smallUnit({ "kits.csv": kits }));
	expect(weekHeadline(state)).toMatch(/are needed; this unit has none in service$/);
});
