import { birthsDraw } from "../../reference/draws.ts";
import { meanOfBatches, randomNumbers } from "../../reference/randomNumbers.ts";
import { playedDays } from "./playedDays.ts";
import { kitsNeeded } from "./results.ts";
import { numberIn } from "./stated.ts";
import { planOf } from "./told.ts";
import type { Unit } from "./unit.ts";

/** Needs without a kit and kits gone out of date, stated and played, with one number of kits. */
export interface Covered {
	readonly unit: string;
	readonly kits: number;
	readonly stated: number;
	readonly played: number;
	readonly error: number;
	readonly expiriesStated: number;
	readonly expiriesPlayed: number;
	readonly expiriesError: number;
	/** More than a quarter, 0.1 per 1,000 and three standard errors apart. */
	readonly beyond: boolean;
}

const BATCHES = 60;
const NEEDS = 60_000;
const MOST_DAYS = 120_000;
const PLAN_DAYS = 7;

/** The kits needed, one fewer and one more, with the unit's own figures and steady Poisson births. */
export function covered(unit: Omit<Unit, "kits">, birthsPerDay: number, seed: number): Covered[] {
	const needed = kitsNeeded(unit, birthsPerDay);
	const perDay = (birthsPerDay * unit.kitsPer100) / 100;
	const days = Math.ceil(Math.min(MOST_DAYS, NEEDS / perDay) / BATCHES);
	return [needed - 1, needed, needed + 1]
		.filter((kits) => kits > 0)
		.map((kits) => {
			const random = randomNumbers(seed + kits);
			const tables = planOf({ ...unit, kits }, { birthsPerDay, register: [] }, PLAN_DAYS).tables;
			const curve = tables["kit-cover.csv"]?.rows as never as Record<string, never>[];
			const stated = numberIn(curve[kits - 1]?.unmet_per_1000_uses);
			const day = tables["day-plan.csv"]?.rows[0] as never as Record<string, never>;
			const batches = Array.from({ length: BATCHES }, () => {
				const births = Array.from({ length: days + 14 }, () =>
					birthsDraw(birthsPerDay, Number.POSITIVE_INFINITY, random),
				);
				const run = playedDays({ ...unit, kits }, births, random).slice(14);
				const sum = (of: (day: (typeof run)[0]) => number) =>
					run.reduce((all, each) => all + of(each), 0);
				return {
					unmet:
						(1000 * sum((each) => each.unmet)) /
						Math.max(
							1,
							sum((each) => each.kits_used),
						),
					expired: sum((each) => each.kits_expired) / days,
				};
			});
			const unmet = meanOfBatches(batches.map((batch) => batch.unmet));
			const expired = meanOfBatches(batches.map((batch) => batch.expired));
			const apart = Math.abs(unmet.mean - stated) - 3 * unmet.standardError;
			return {
				unit: unit.name,
				kits,
				stated,
				played: unmet.mean,
				error: unmet.standardError,
				expiriesStated: numberIn(day.kits_expired_expected),
				expiriesPlayed: expired.mean,
				expiriesError: expired.standardError,
				beyond: apart > Math.max(0.1, 0.25 * stated),
			};
		});
}
