import { calculation } from "../calculation.ts";
import { sources } from "../sources.ts";
import type { Projection } from "../stock/projection.ts";
import { addDays, dayNumber, type IsoDate } from "../values/date.ts";

interface Inputs {
	readonly projection: Projection;
	readonly firstDay: IsoDate;
	readonly orderBy: string;
	readonly packs: number;
	readonly packSize: number;
	readonly usable: number;
	readonly onOrder: number;
	readonly use: number;
	readonly windowDays: number;
	readonly leadDays: number;
	/** Days a new lot keeps its date and strength; null where that does not matter. */
	readonly keepsDays: number | null;
}

const amount = (quantity: number) => String(Number(quantity.toFixed(1)));

/** What the storekeeper should look out for with an item, in words; empty where nothing. */
export const orderRemark = calculation<Inputs, string>({
	key: "order_remark",
	label: "Remark",
	unit: "",
	formula:
		"Said where stock runs out before an order can arrive, an order is late, part of a lot would go out of date unused, or the order would outlast its date or strength.",
	source: sources.firstExpiredFirstOut,
	inputs: {
		projection: { label: "Stock day by day", unit: "in the item's measure" },
		firstDay: { label: "First day", unit: "" },
		orderBy: { label: "Order by", unit: "" },
		packs: { label: "Packs to order", unit: "packs" },
		packSize: { label: "Pack size", unit: "in the item's measure" },
		usable: { label: "Usable stock", unit: "in the item's measure" },
		onOrder: { label: "On order", unit: "in the item's measure" },
		use: { label: "Use, expected", unit: "in the item's measure" },
		windowDays: { label: "Lead and review days", unit: "days" },
		leadDays: { label: "Days from order to delivery", unit: "days" },
		keepsDays: { label: "A new lot keeps for", unit: "days" },
	},
	compute: (of) =>
		[...runningOut(of), ...late(of), ...goingToWaste(of), ...outlasting(of)].join(" "),
});

function runningOut({ projection, firstDay, leadDays }: Inputs): string[] {
	const { runOut } = projection;
	if (runOut === null || runOut >= leadDays) return [];
	return [
		`Runs out on ${addDays(firstDay, runOut)}, before an order can arrive: find some elsewhere.`,
	];
}

function late({ orderBy, firstDay, packs }: Inputs): string[] {
	if (packs === 0 || orderBy === "" || orderBy >= firstDay) return [];
	const days = (dayNumber(firstDay) as number) - (dayNumber(orderBy) as number);
	return [`Late by ${days} ${days === 1 ? "day" : "days"}: order today.`];
}

function goingToWaste({ projection, firstDay }: Inputs): string[] {
	return projection.waste.map(
		({ lot, day, quantity, why }) =>
			`Lot ${lot}: ${amount(quantity)} unused and ${why} ${day <= 0 ? "already" : `on ${addDays(firstDay, day)}`}.`,
	);
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
		`The order would last ${Math.ceil(lasts)} days and keeps for ${keepsDays}: order less and more often, or a smaller pack.`,
	];
}
