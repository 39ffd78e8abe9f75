import { atMost } from "../../atMost.ts";
import { calculation } from "../../calculation.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { daysTooLong } from "../../stock/daysTooLong.ts";
import type { ProjectedLot, Projection } from "../../stock/projection.ts";
import { useWithWastage } from "../../stock/withWastage.ts";
import { sumOfAll } from "../../sumOfAll.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { daysLate, type OrderToPlace } from "./daysLate.ts";

interface Inputs extends OrderToPlace {
	readonly projection: Projection;
	readonly lots: readonly ProjectedLot[];
	readonly packSize: number;
	readonly usable: number;
	readonly onOrder: number;
	readonly overdue: number;
	/** null where it was counted in time, or need not be. */
	readonly notCountedDays: number | null;
	readonly use: number;
	readonly windowDays: number;
	readonly leadDays: number;
	/** Days a new lot keeps its date and strength; null where that does not matter. */
	readonly keepsDays: number | null;
}

/** What the storekeeper should look out for with an item, in words; empty where nothing. */
export const orderRemark = calculation<Inputs, string>({
	key: "order_remark",
	label: say`Remark`,
	unit: "",
	formula: say`Said where stock runs out before an order can arrive, an order is late, a delivery is overdue, one comes too late to be taken off this order, the last count is too old, part of a lot would go out of date unused, or the order would outlast its date or strength.`,
	source: sources.firstExpiredFirstOut,
	inputs: {
		projection: { label: say`Stock day by day`, unit: say`in the item's measure` },
		lots: { label: say`Lots`, unit: say`in the item's measure` },
		firstDay: { label: say`First day`, unit: "" },
		orderBy: { label: say`Order by`, unit: "" },
		knownSince: { label: say`Kept with this workbook since`, unit: "" },
		packs: { label: say`Packs to order`, unit: say`packs` },
		packSize: { label: say`Pack size`, unit: say`in the item's measure` },
		usable: { label: say`Usable stock`, unit: say`in the item's measure` },
		onOrder: { label: say`On the way`, unit: say`in the item's measure` },
		overdue: {
			label: say`Overdue: on the way, its day has passed`,
			unit: say`in the item's measure`,
		},
		notCountedDays: { label: daysTooLong.label, unit: daysTooLong.unit },
		use: { label: useWithWastage.label, unit: useWithWastage.unit },
		windowDays: { label: say`Delivery days and days between orders`, unit: say`days` },
		leadDays: { label: say`Days from order to delivery`, unit: say`days` },
		keepsDays: { label: say`A new lot keeps for`, unit: say`days` },
	},
	example: {
		// Runs out in 3 days, delivered in 7.
		inputs: {
			projection: { stock: [20, 10, 0], runOut: 3, waste: [] },
			lots: [],
			firstDay: "2027-03-01",
			orderBy: "",
			knownSince: "2027-02-01",
			packs: 1,
			packSize: 100,
			usable: 30,
			onOrder: 0,
			overdue: 0,
			notCountedDays: null,
			use: 100,
			windowDays: 10,
			leadDays: 7,
			keepsDays: null,
		},
		result: runsOutFirst("2027-03-04"),
		within: 0,
	},
	compute: (of) =>
		[
			...runningOut(of),
			...late(of),
			...notCome(of),
			...tooLate(of),
			...goingToWaste(of),
			...outlasting(of),
			...countedLongAgo(of),
		].join(" "),
});

function runningOut({ projection, firstDay, leadDays }: Inputs): string[] {
	const { runOut } = projection;
	if (runOut === null || runOut >= leadDays) return [];
	return [runsOutFirst(addDays(firstDay, runOut))];
}

function runsOutFirst(on: IsoDate): string {
	return say`Runs out on ${on}, before an order can arrive: find some elsewhere.`;
}

function late(of: Inputs): string[] {
	const days = daysLate(of);
	if (days === null) return [];
	if (days <= 0) return [say`Order today.`];
	return [days === 1 ? say`Late by 1 day: order today.` : say`Late by ${days} days: order today.`];
}

function notCome({ overdue }: Inputs): string[] {
	if (overdue === 0) return [];
	return [
		say`Of what is on the way, ${atMost(overdue, 1)} is overdue: ask where it is. It is in no day's stock until it is received.`,
	];
}

/** What nothing is ordered less for, because the next order could be here as soon. */
function tooLate({ lots, firstDay, windowDays, packs }: Inputs): string[] {
	if (packs === 0) return [];
	const late = lots.filter(
		({ from, last, quantity }) => from > 0 && from >= windowDays && last >= from && quantity > 0,
	);
	if (late.length === 0) return [];
	const amount = atMost(sumOfAll(late.map(({ quantity }) => quantity)), 1);
	const day = addDays(firstDay, Math.min(...late.map(({ from }) => from)));
	return [
		say`Of what is on the way, ${amount} comes only from ${day} on, when the next order could be here too: it is not taken off this order.`,
	];
}

function countedLongAgo({ notCountedDays }: Inputs): string[] {
	if (notCountedDays === null) return [];
	return [say`Last counted ${notCountedDays} days ago: count it.`];
}

function goingToWaste({ projection, firstDay }: Inputs): string[] {
	return projection.waste.map(({ lot, day, quantity, why }) => {
		const amount = atMost(quantity, 1);
		const on = day <= 0 ? undefined : addDays(firstDay, day);
		return why === "out of date" ? outOfDate(lot, amount, on) : tooWeak(lot, amount, on);
	});
}

function outOfDate(lot: string, amount: string, on: IsoDate | undefined): string {
	return on === undefined
		? say`Lot ${lot}: ${amount} unused and out of date already.`
		: say`Lot ${lot}: ${amount} unused and out of date on ${on}.`;
}

function tooWeak(lot: string, amount: string, on: IsoDate | undefined): string {
	return on === undefined
		? say`Lot ${lot}: ${amount} unused and too weak for the strength wanted already.`
		: say`Lot ${lot}: ${amount} unused and too weak for the strength wanted on ${on}.`;
}

function outlasting({
	packs,
	packSize,
	usable,
	onOrder,
	use,
	windowDays,
	keepsDays,
}: Inputs): string[] {
	if (packs === 0 || keepsDays === null || use === 0) return [];
	const lasts = ((usable + onOrder + packs * packSize) / use) * windowDays;
	if (lasts <= keepsDays) return [];
	return [
		say`The order would last ${Math.ceil(lasts)} days and keeps for ${keepsDays}: order less and more often, or a smaller pack.`,
	];
}
