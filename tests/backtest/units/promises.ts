import type { Plan } from "../../../src/core/plan/plan.ts";
import { type PlayedDay, playedDays } from "./playedDays.ts";
import { numberIn, type Stated, statedIn, totalRow } from "./stated.ts";
import { GAUZE_PER_KIT, type Known, planOf, SERVICE_LEVELS } from "./told.ts";
import type { Unit } from "./unit.ts";

/** One promise of a plan, and in what share of the futures played it was kept. */
export interface Promised {
	readonly what: string;
	readonly span: string;
	readonly stated: number;
	readonly kept: number;
}

export const WARM_UP_DAYS = 21;
export const MONTH = 28;
const WEEK = 7;
/** Lead of 7 and review of 7 days. */
const ORDER_DAYS = 14;
const LATE_DAYS = 3;
const MEASURES = ["births", "kits_used", "kits_to_reprocess", "rounds"] as const;

const countOf: Record<(typeof MEASURES)[number], (day: PlayedDay) => number> = {
	births: (day) => day.births,
	kits_used: (day) => day.kits_used,
	kits_to_reprocess: (day) => day.kits_used + day.kits_expired,
	rounds: (day) => day.rounds,
};

/**
 * Every number set aside in a unit's plans of a day, a week and four weeks and in its
 * orders, beside the futures that then came.
 *
 * @param births draws the births of 21 days before the plan and 28 from its first day on
 */
export function promisesOf(
	unit: Unit,
	known: Known,
	births: () => readonly number[],
	futures: number,
	random: () => number,
): Promised[] {
	const played = Array.from({ length: futures }, () =>
		playedDays(unit, births(), random).slice(WARM_UP_DAYS),
	);
	const kept = (days: number, of: (day: PlayedDay) => number, aside: number) =>
		played.filter(
			(future) => future.slice(0, days).reduce((sum, day) => sum + of(day), 0) <= aside + 1e-9,
		).length / futures;
	const promise = (
		what: string,
		span: string,
		days: number,
		of: (day: PlayedDay) => number,
		{ aside, chance }: Stated,
	): Promised => ({ what, span, stated: chance, kept: kept(days, of, aside) });
	const gauze = (day: PlayedDay) => GAUZE_PER_KIT * (day.kits_used + day.kits_expired);
	const spans = [
		["day", 1],
		["week", WEEK],
		["four weeks", MONTH],
	] as const;
	const plans = spans.map(([, days]) => planOf(unit, known, days));
	const set = spans.flatMap(([span, days], i) => {
		const plan = plans[i] as Plan;
		return [
			...MEASURES.map((what) =>
				promise(what, span, days, countOf[what], statedIn(totalRow(plan, what).set_aside, 0.95)),
			),
			promise("gauze", span, days, gauze, statedIn(totalRow(plan, "gauze_pieces").set_aside, 0.95)),
		];
	});
	const ordered = plans[0]?.tables["order.csv"]?.rows as never as Record<string, never>[];
	const orders = SERVICE_LEVELS.flatMap((level, item) => {
		const aside = numberIn(ordered[item]?.target_stock);
		const stated = { aside, chance: level };
		return [
			promise(`order at ${level}`, "delivery in time", ORDER_DAYS, gauze, stated),
			promise(`order at ${level}`, "delivery 3 days late", ORDER_DAYS + LATE_DAYS, gauze, stated),
		];
	});
	return [...set, ...orders];
}
