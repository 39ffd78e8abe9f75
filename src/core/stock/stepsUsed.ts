import { upTo } from "../chlorine/measureOut.ts";
import { always, type Counts } from "../counts/counts.ts";
import { poisson } from "../counts/poisson.ts";
import { either, plus, shifted, sumOf } from "../counts/sumOf.ts";
import type { UseInputs } from "./useOverDays.ts";

interface Steps {
	readonly perRound: number;
	readonly perLoad: number;
	readonly perKit: number;
	readonly perDescale: number;
}

/** How likely each amount of use over the days is, counted in steps of `step`. */
export function stepsUsed(
	{ rates, days, kitsInLoad, descaleEvery }: UseInputs,
	step: number,
): Counts {
	const inSteps = (rate: number) => Math.round(upTo(rate, step) / step);
	const steps: Steps = {
		perRound: inSteps(rates.perRound),
		perLoad: inSteps(rates.perLoad),
		perKit: inSteps(rates.perKit),
		perDescale: descaleEvery > 0 ? inSteps(rates.perDescale) : 0,
	};
	const everyDay = inSteps(rates.perDay) * days.length;
	return shifted(inRounds(steps, days, kitsInLoad, descaleEvery), everyDay);
}

function inRounds(
	steps: Steps,
	days: UseInputs["days"],
	kitsInLoad: number,
	every: number,
): Counts {
	const oneByOne = days.every((day) => day.kind === "after_each_use");
	if (oneByOne)
		return kitByKit(
			steps,
			days.reduce((sum, day) => sum + (day.kits[0] as number), 0),
			every,
		);
	const means = days.flatMap((day) => [...day.kits]);
	const perRound = means.map((m) => useOfRound(steps, m, kitsInLoad));
	return steps.perDescale === 0
		? sumOf(perRound)
		: withDescaling(steps.perDescale, means, perRound, every);
}

/** Use of one round: nothing where it does not run. */
function useOfRound(
	{ perRound, perLoad, perKit }: Steps,
	kits: number,
	kitsInLoad: number,
): Counts {
	return mapped(poisson(kits), (n) =>
		n === 0 ? 0 : perRound + perLoad * Math.ceil(n / kitsInLoad) + perKit * n,
	);
}

/** Each kit a round and a load of its own; a descaling with the first round and every so many after. */
function kitByKit(
	{ perRound, perLoad, perKit, perDescale }: Steps,
	kits: number,
	every: number,
): Counts {
	return mapped(
		poisson(kits),
		(n) =>
			n * (perRound + perLoad + perKit) +
			(perDescale === 0 ? 0 : Math.ceil(n / every) * perDescale),
	);
}

/**
 * Rounds in turn, keeping apart how many have run since the last descaling.
 *
 * The first round that runs descales, so that n rounds take ceil(n / every) descalings.
 */
function withDescaling(
	perDescale: number,
	means: readonly number[],
	perRound: readonly Counts[],
	every: number,
): Counts {
	let sinceDescaling: (Counts | undefined)[] = [always(0)];
	means.forEach((m, i) => {
		const idle = Math.exp(-m);
		const running = whenRunning(perRound[i] as Counts, idle);
		const next: (Counts | undefined)[] = [];
		sinceDescaling.forEach((used, phase) => {
			if (!used) return;
			const after = (phase + 1) % every;
			const added = plus(phase === 0 ? shifted(used, perDescale) : used, running);
			next[phase] = either(next[phase], { ...used, chance: used.chance.map((p) => p * idle) });
			next[after] = either(next[after], added);
		});
		sinceDescaling = next;
	});
	return sinceDescaling.reduce(
		(all, used) => either(all, used ?? { first: 0, chance: new Float64Array() }),
		undefined,
	) as Counts;
}

/** The use of a round with the chance of its not running taken out of the amount 0. */
function whenRunning(use: Counts, idle: number): Counts {
	const chance = Float64Array.from(use.chance);
	if (use.first === 0) chance[0] = Math.max(0, (chance[0] as number) - idle);
	return { first: use.first, chance };
}

/** How likely each amount is when every count stands for an amount. */
function mapped({ first, chance }: Counts, amountOf: (count: number) => number): Counts {
	const amounts = Array.from(chance, (_, i) => amountOf(first + i));
	const least = Math.min(...amounts);
	const spread = new Float64Array(Math.max(...amounts) - least + 1);
	amounts.forEach((amount, i) => {
		spread[amount - least] = (spread[amount - least] as number) + (chance[i] as number);
	});
	return { first: least, chance: spread };
}
