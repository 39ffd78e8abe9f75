import { expect, test } from "vitest";
import { daysLate, isLate, type OrderToPlace } from "../../../../src/core/plan/store/daysLate.ts";

const order: OrderToPlace = {
	packs: 2,
	orderBy: "2027-02-25",
	knownSince: "2027-01-01",
	firstDay: "2027-03-01",
};

/** Manual, orders: late from the day after the last day in time, and only by days on which somebody could have known. */
test.each<[string, Partial<OrderToPlace>, number | null]>([
	["its day was four days ago", {}, 4],
	["its day was yesterday", { orderBy: "2027-02-28" }, 1],
	["its day is today", { orderBy: "2027-03-01" }, null],
	["its day is to come", { orderBy: "2027-03-02" }, null],
	["it has no day", { orderBy: "" }, null],
	["nothing is to be ordered", { packs: 0 }, null],
	["kept only since its day", { knownSince: "2027-02-25" }, 4],
	["kept only after its day", { knownSince: "2027-02-27" }, 2],
	["kept only since today", { knownSince: "2027-03-01" }, 0],
])("%s", (_what, otherwise, days) => {
	const found = { ...order, ...otherwise };
	expect(daysLate(found)).toBe(days);
	expect(isLate(found)).toBe((days ?? 0) > 0);
});
