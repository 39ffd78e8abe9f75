import type { Workbook } from "../../src/core/workbook.ts";
import { unitWith } from "../core/smallUnit.ts";

/** Which births the days of an invented plan have: of their weekday, each its own, or none typed. */
export type Births = "by weekday" | "all different" | "not typed";

const FIRST = Date.UTC(2027, 2, 1);
export const MILLISECONDS_PER_DAY = 86_400_000;

/** Mean births of a day of the plan, counted from 0. */
export function birthsOn(day: number, births: Births = "by weekday"): number {
	return births === "by weekday" ? 4 + (day % 7) : 3 + ((day * 7919) % 1000) / 100;
}

/** The small invented unit with a plan of so many days. */
export function longUnit(
	days: number,
	births: Births = "by weekday",
	files: Record<string, string> = {},
): Workbook {
	const lines = Array.from({ length: births === "not typed" ? 0 : days }, (_, day) => {
		const date = new Date(FIRST + day * MILLISECONDS_PER_DAY).toISOString().slice(0, 10);
		return `${date},${birthsOn(day, births)},`;
	});
	return unitWith(
		{ plan_days: days, plan_confidence: 0.95 },
		{ "births.csv": ["date,births,note", ...lines].join("\n"), ...files },
	);
}

/** So many items, each counted by the kit and in need of a lot. */
export function withItems(items: number): Record<string, string> {
	const usage = Array.from({ length: items }, (_, i) => `item ${i},kit,${i + 1},`);
	const listed = Array.from({ length: items }, (_, i) => `item ${i},other,piece,100,4,7,5,0.95`);
	return {
		"usage.csv": ["item,basis,quantity,note", ...usage].join("\n"),
		"items.csv": [
			"item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level",
			...listed,
			"liquid,other,L,5,3,7,10,0.95",
		].join("\n"),
	};
}
