import { expect, test } from "vitest";
import { withCellsOnDemand } from "../../src/core/rowOnDemand.ts";

interface Later {
	readonly litres: number;
	readonly pots: number;
}

function counted() {
	let times = 0;
	const row = withCellsOnDemand({ date: "2027-03-01" }, ["litres", "pots"], (): Later => {
		times++;
		return { litres: 20, pots: 2 };
	});
	return { row, times: () => times };
}

test("nothing is worked out until a cell is looked at, then all of them once", () => {
	const { row, times } = counted();
	expect(row.date).toBe("2027-03-01");
	expect(Object.keys(row)).toEqual(["date", "litres", "pots"]);
	expect("pots" in row).toBe(true);
	expect("lid" in row).toBe(false);
	expect(["date", "pots", "lid"].map((key) => Object.hasOwn(row, key))).toEqual([
		true,
		true,
		false,
	]);
	expect(row.constructor).toBe(Object);
	expect(times()).toBe(0);
	expect([row.litres, row.pots, row.litres]).toEqual([20, 2, 20]);
	expect(times()).toBe(1);
});

test("whoever goes through its cells, or copies them, finds a row like any other", () => {
	const whole = { date: "2027-03-01", litres: 20, pots: 2 };
	expect(Object.values(counted().row)).toEqual(["2027-03-01", 20, 2]);
	expect({ ...counted().row, pots: 3 }).toEqual({ ...whole, pots: 3 });
	expect(counted().row).toEqual(whole);
	expect(counted().row).not.toEqual({ ...whole, litres: 21 });
});

test("work that fails fails again for whoever asks next, and its other cells stay", () => {
	let times = 0;
	const row = withCellsOnDemand({ date: "2027-03-01" }, ["litres"], (): { litres: number } => {
		times++;
		throw new Error("program error");
	});
	expect(() => row.litres).toThrow("program error");
	expect(() => row.litres).toThrow("program error");
	expect([row.date, times]).toEqual(["2027-03-01", 2]);
});
