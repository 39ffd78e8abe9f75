import { expect, test } from "vitest";
import { lotsInStore } from "../../../src/core/stock/lotsInStore.ts";
import { answerOf } from "../answerOf.ts";

test.each<[string, string | null, string | null, number, number]>([
	["in the store, for ever", null, null, 0, Number.POSITIVE_INFINITY],
	["on the way", "2027-03-03", null, 2, Number.POSITIVE_INFINITY],
	["late", "2027-02-27", "2027-03-01", -2, 0],
	["out of date", null, "2027-02-28", 0, -1],
])("a lot %s", (_what, arrives_on, expires_on, from, last) => {
	const listed = [{ lot: "A", arrives_on, expires_on }];
	const [lot] = answerOf(lotsInStore, { onHand: [12], listed, firstDay: "2027-03-01" });
	expect(lot).toMatchObject({ name: "A", quantity: 12, from, last, ends: "out of date" });
	expect([0, 7].map((day) => lot?.perUnit(day))).toEqual([1, 1]);
});
