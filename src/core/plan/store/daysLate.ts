import { daysFrom, type IsoDate } from "../../values/date.ts";

/** An order that is still to be placed, by what tells whether it is late. */
export interface OrderToPlace {
	readonly packs: number;
	/** The last day to order in time; empty where there is none. */
	readonly orderBy: string;
	/** The first day an order could have been placed by this workbook (`keptSince`). */
	readonly knownSince: IsoDate;
	readonly firstDay: IsoDate;
}

/**
 * Days by which an order that is still to be placed is late on the first day of the plan.
 *
 * On the first day of a new workbook nothing is late yet: nobody could have ordered by it.
 *
 * @returns 0 where its day has passed but nobody could have known; null where it has not passed, or nothing is to be ordered
 * @example daysLate({ packs: 2, orderBy: "2027-02-25", knownSince: "2027-01-01", firstDay: "2027-03-01" }) // 4
 */
export function daysLate({ packs, orderBy, knownSince, firstDay }: OrderToPlace): number | null {
	if (packs === 0 || orderBy === "" || orderBy >= firstDay) return null;
	return daysFrom(orderBy > knownSince ? orderBy : knownSince, firstDay);
}

/** Whether it is late by a day at least. */
export function isLate(order: OrderToPlace): boolean {
	return (daysLate(order) ?? 0) > 0;
}
