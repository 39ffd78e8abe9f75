import { chanceAtMost } from "../../src/core/counts/counts.ts";
import { negativeBinomial } from "../../src/core/counts/negativeBinomial.ts";
import type { DailyCounts } from "../../src/core/forecast/dailyCounts.ts";
import { discountedFilter } from "../../src/core/forecast/discountedFilter.ts";
import { forecast } from "../../src/core/forecast/forecast.ts";
import { scorecard } from "../../src/core/forecast/scorecard.ts";
import { factorsFrom, factorsOf } from "../../src/core/forecast/weekdayFactors.ts";
import type { IsoDate } from "../../src/core/values/date.ts";
import { answerOf } from "../core/answerOf.ts";

/** One-day forecasts of a unit's whole register, scored as the page scores them. */
export interface WholeRegister {
	readonly days: number;
	readonly coverage: number;
	/** Coverage with each count placed at random within its own step of the distribution. */
	readonly placedCoverage: number;
	readonly logScore: number;
	readonly overPlainMean: number;
	readonly overLastWeek: number;
}

/** Learns from the whole register and forecasts each of its days from those before it. */
export function wholeRegister(
	counts: readonly number[],
	firstDay: IsoDate,
	random: () => number,
): WholeRegister {
	const register: DailyCounts = { firstDay, counts };
	const factors = factorsOf(register);
	const made = answerOf(forecast, { register, factors, birthsPerDay: null, priorDays: 7 });
	const card = scorecard(register, made);
	if (!card) throw new Error("no day could be scored");
	const turned = factorsFrom(firstDay, factors);
	let days = 0;
	let placed = 0;
	discountedFilter(counts, turned, made, (_, count, size, mean) => {
		const ahead = negativeBinomial(size, mean);
		const below = chanceAtMost(ahead, count - 1);
		const at = below + random() * (chanceAtMost(ahead, count) - below);
		days++;
		if (at >= 0.05 && at <= 0.95) placed++;
	});
	return {
		days: card.days,
		coverage: card.coverage90,
		placedCoverage: placed / days,
		logScore: card.logScore,
		overPlainMean: card.logScore - card.plainMean,
		overLastWeek: card.logScore - card.lastWeek,
	};
}
