import type { ComputedTable } from "../../../core/computedTable.ts";
import type { Problem } from "../../../core/problem.ts";
import type { unitsOrderSheet } from "../../../core/sheets/unitsOrder.ts";
import { DistrictOrder } from "../../../core/units/districtOrder.ts";
import type { ItemNames } from "../../../core/units/itemNames.ts";
import type { InStore } from "../../../core/units/storeStock.ts";
import { namedTwice } from "../../../core/units/unitsProblems.ts";
import { worstFirst } from "../../../core/units/worstFirst.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { sameOrderTwice } from "../../../io/readOrders.ts";
import type { GivenUnit } from "./givenUnits.ts";
import type { HeldUnit } from "./heldUnit.ts";
import type { ReadUnit } from "./readUnit.ts";

export interface DistrictSums {
	readonly table: ComputedTable<typeof unitsOrderSheet>;
	readonly problems: readonly Problem[];
}

/** The units that were read, the worst first, and those that still wait. */
export class District {
	#units: HeldUnit[] = [];
	#isSorted = true;
	readonly #seen = new Map<string, HeldUnit>();
	/** Files that said the same as another one, letter by letter. */
	readonly #twins: Problem[] = [];
	readonly #waiting: GivenUnit[] = [];
	readonly #paths = new Map<string, number>();

	get units(): readonly HeldUnit[] {
		if (!this.#isSorted) this.#units.sort((one, other) => worstFirst(one.row, other.row));
		this.#isSorted = true;
		return this.#units;
	}

	/** How many units are in the sums. */
	get counted(): number {
		return this.#units.filter(({ row }) => row.state !== "not_read").length;
	}

	/** Units often send files of one name, and none of them may stand in for another. */
	receive(given: readonly GivenUnit[]): void {
		const named = given.map((unit) => {
			const times = (this.#paths.get(unit.path) ?? 0) + 1;
			this.#paths.set(unit.path, times);
			return times === 1 ? unit : { ...unit, path: `${unit.path} (${times})` };
		});
		this.#waiting.push(...named);
	}

	/** How many were given and not read yet: more than none after a stop. */
	get waiting(): number {
		return this.#waiting.length;
	}

	/** The next that waits; it waits no longer. */
	next(): GivenUnit | undefined {
		return this.#waiting.shift();
	}

	/** The same text given twice is one unit, not two. */
	add({ unit, mark }: ReadUnit): void {
		const earlier = mark === "" ? undefined : this.#seen.get(mark);
		if (earlier) {
			this.#twins.push(sameOrderTwice(unit.given.path, earlier.given.path));
			return;
		}
		if (mark !== "") this.#seen.set(mark, unit);
		this.#units.push(unit);
		this.#isSorted = false;
	}

	takeOut(unit: HeldUnit): void {
		this.#units = this.#units.filter((one) => one !== unit);
		for (const [mark, one] of this.#seen) if (one === unit) this.#seen.delete(mark);
	}

	/** What concerns several units or none: a file given twice, two workbooks of one unit. */
	get problems(): readonly Problem[] {
		const names = new Set<string>();
		const again = this.units.filter(({ row }) => {
			if (row.state === "not_read") return false;
			const isAgain = names.has(row.unit);
			names.add(row.unit);
			return isAgain;
		});
		return [...this.#twins, ...again.map(({ row }) => namedTwice(row.unit, row.path))];
	}

	/** First days of the units' plans, with how many plans begin on each: the earliest first. */
	get firstDays(): readonly (readonly [day: IsoDate, units: number])[] {
		const days = new Map<IsoDate, number>();
		for (const { row } of this.#units)
			if (row.first_day) days.set(row.first_day, (days.get(row.first_day) ?? 0) + 1);
		return [...days].sort(([one], [other]) => Number(one > other) - Number(one < other));
	}

	/** Adds the orders up, unit by unit, so that a page can stay alive in between. */
	*sums(nameOf: ItemNames, store: readonly InStore[]): Generator<void, DistrictSums> {
		const order = new DistrictOrder(nameOf);
		for (const { orders } of this.units) {
			order.add(orders);
			yield;
		}
		return order.table(store);
	}
}
