import { meanOfBatches, randomNumbers } from "../../reference/randomNumbers.ts";
import { type Promised, promisesOf } from "./promises.ts";
import type { Scenario } from "./scenarios.ts";
import { numberIn } from "./stated.ts";
import { planOf } from "./told.ts";
import type { Unit } from "./unit.ts";

/** A promise over all units of a sort: shares of 100, and the standard error between units. */
export interface Kept {
	readonly scenario: string;
	readonly what: string;
	readonly span: string;
	readonly stated: number;
	readonly kept: number;
	readonly error: number;
	/** Points beyond the limits: a point and three standard errors below, two points and three above. */
	readonly beyond: number;
}

/** Kits that the unit's own figures ask for. */
export function kitsNeeded(unit: Omit<Unit, "kits">, birthsPerDay: number): number {
	const rows = planOf({ ...unit, kits: 2 }, { birthsPerDay, register: [] }, 7).tables[
		"kit-cover.csv"
	]?.rows as never as Record<string, { outcome: { value: unknown } }>[];
	return numberIn(rows.find((row) => row.enough?.outcome.value === "yes")?.kits as never);
}

/** Plays every unit of a scenario. */
export function played(scenario: Scenario, seed: number): Kept[] {
	const random = randomNumbers(seed);
	const unit = { ...scenario.unit, kits: kitsNeeded(scenario.unit, scenario.birthsPerDay) };
	const all = Array.from({ length: scenario.replicates }, () => {
		const { known, births } = scenario.one(random);
		return promisesOf(unit, known, births, scenario.futures, random);
	});
	return (all[0] as Promised[]).map(({ what, span }, i) => {
		const each = all.map((promises) => promises[i] as Promised);
		const stated = (100 * each.reduce((sum, one) => sum + one.stated, 0)) / each.length;
		const { mean, standardError } = meanOfBatches(each.map((one) => 100 * (one.kept - one.stated)));
		const below = -mean - 1 - 3 * standardError;
		const above = mean - 2 - 3 * standardError;
		return {
			scenario: scenario.name,
			what,
			span,
			stated,
			kept: stated + mean,
			error: standardError,
			beyond: span.includes("late")
				? 0
				: Math.max(0, below, what.startsWith("gauze") || what.startsWith("order") ? 0 : above),
		};
	});
}
