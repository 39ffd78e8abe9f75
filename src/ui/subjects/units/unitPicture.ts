import { say } from "../../../core/say.ts";
import { dayNumber } from "../../../core/values/date.ts";
import { el } from "../../dom/el.ts";
import { svg } from "../../dom/svg.ts";
import { shortened } from "../../format/shortened.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { HeldUnit } from "./heldUnit.ts";

const WIDTH = 620;
const KIT_PX = 16;
/** More kits than these are told in words alone. */
const MOST_KITS = 36;
const LONGEST_NAME = 28;
const MOST_ITEMS = 6;
const ROW_PX = 20;
const NAME_PX = 200;
const DAY_NAME_PX = 90;

/** Kits needed and in service, and which items run out when: a small picture, with its words. */
export function unitPicture(unit: HeldUnit): HTMLElement {
	const { kits_needed: needed, kits_in_service: owned } = unit.row;
	const kits = kitWords(owned, needed);
	const items = runOuts(unit);
	const supplies =
		items.length === 0
			? say`Nothing runs out within the days looked at.`
			: say`What runs out first: ${items.map(([item, day]) => say`${item} on ${shownDay(day)}`).join(", ")}.`;
	const shapes = [
		...kitMarks(owned ?? 0, needed ?? 0),
		...runOutLines(items, unit.row.first_day ?? items[0]?.[1] ?? ""),
	];
	const height = 30 + items.length * ROW_PX;
	const words = `${kits} ${supplies}`;
	return el(
		"figure",
		{ class: "unit-picture" },
		svg("svg", { viewBox: `0 0 ${WIDTH} ${height}`, role: "img", "aria-label": words }, ...shapes),
		el("figcaption", {}, words),
	);
}

function kitWords(owned: number | null, needed: number | null): string {
	if (needed === null || owned === null) return say`How many kits it needs is not known.`;
	const words = say`Kits in service (filled): ${owned}; needed: ${needed}.`;
	return owned < needed ? say`${words} Lacking (dashed): ${needed - owned}.` : words;
}

/** A mark for each kit, a dashed one for each that is lacking. */
function kitMarks(owned: number, needed: number): SVGElement[] {
	const all = Math.max(owned, needed);
	if (all > MOST_KITS) return [];
	return Array.from({ length: all }, (_, at) =>
		svg("rect", {
			x: 2 + at * KIT_PX,
			y: 4,
			width: KIT_PX - 4,
			height: KIT_PX - 4,
			class: at < owned ? "kit-owned" : "kit-lacking",
		}),
	);
}

/** A bar for each item from the plan's first day to the day it runs out. */
function runOutLines(items: readonly (readonly [string, string])[], from: string): SVGElement[] {
	const first = dayNumber(from) ?? 0;
	const lasts = items.map(([, day]) => Math.max(0, (dayNumber(day) ?? first) - first));
	const longest = Math.max(1, ...lasts);
	return items.flatMap(([item, day], at) => {
		const y = 30 + at * ROW_PX;
		const length = ((lasts[at] ?? 0) / longest) * (WIDTH - NAME_PX - DAY_NAME_PX);
		return [
			svg("text", { x: 0, y: y + 12 }, shortened(item, LONGEST_NAME)),
			svg("rect", { x: NAME_PX, y: y + 3, width: Math.max(2, length), height: 10, class: "lasts" }),
			svg("text", { x: NAME_PX + length + 6, y: y + 12, class: "day" }, shownDay(day)),
		];
	});
}

function runOuts({ orders }: HeldUnit): (readonly [item: string, day: string])[] {
	return orders
		.flatMap(({ item, run_out_on: day }) => (day ? [[item, day] as const] : []))
		.sort(([, one], [, other]) => Number(one > other) - Number(one < other))
		.slice(0, MOST_ITEMS);
}
