import type { Column } from "../../src/core/column.ts";
import { addDays } from "../../src/core/values/date.ts";

export type Random = () => number;

/** The first day of every invented plan; other days lie around it. */
export const START = "2027-03-01";

/** A whole number from `min` to `max`. */
export const whole = (random: Random, min: number, max: number) =>
	min + Math.floor(random() * (max - min + 1));

/** One of some things. */
export const oneOf = <T>(random: Random, all: readonly T[]): T =>
	all[Math.floor(random() * all.length)] as T;

const two = (number: number) => String(number).padStart(2, "0");
const clock = (random: Random) => `${two(whole(random, 0, 23))}:${two(whole(random, 0, 59))}`;
const day = (random: Random, days: number) => addDays(START, whole(random, -days, days));

/**
 * A text that a column allows: mostly what a unit has, now and then anything up to the column's
 * limits, or the limits themselves.
 */
export function anyCell(random: Random, { value, fallback, key }: Cell): string {
	if (value.allowed.includes("blank") && random() < 0.3) return "";
	const { type, constraints } = value.tableSchema as Described;
	if (value.options) return oneOf(random, value.options);
	if (type === "integer" || type === "number") {
		const { minimum = 0, maximum = 1e6 } = constraints ?? {};
		const found = numberWithin(random, minimum, maximum, Number(fallback));
		return type === "integer" ? String(Math.round(found)) : decimals(found, minimum, maximum);
	}
	if (type === "date") return day(random, random() < 0.9 ? 40 : 4000);
	if (type === "time") return clock(random);
	if (type === "datetime") return `${day(random, 30)} ${clock(random)}`;
	return constraints?.required ? `${key} ${whole(random, 0, 99)}` : "";
}

type Cell = Pick<Column<unknown>, "value" | "fallback"> & { readonly key: string };

interface Described {
	readonly type: string;
	readonly constraints?: {
		readonly minimum?: number;
		readonly maximum?: number;
		readonly required?: boolean;
	};
}

function numberWithin(random: Random, min: number, max: number, usual: number): number {
	const chance = random();
	if (chance < 0.04) return random() < 0.5 ? min : max;
	if (chance < 0.6 && usual > 0)
		return Math.min(max, Math.max(min, usual * Math.exp(2 * random() - 1)));
	if (chance < 0.8) return min + random() * Math.min(max - min, 20);
	const least = Math.max(min, 1e-3, max * 1e-9);
	return Math.exp(Math.log(least) + random() * (Math.log(max) - Math.log(least)));
}

function decimals(number: number, min: number, max: number): string {
	const rounded = Number(number.toPrecision(4));
	return String(Number(Math.min(max, Math.max(min, rounded)).toFixed(6)));
}
