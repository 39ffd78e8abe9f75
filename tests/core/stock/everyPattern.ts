import type { UseInputs } from "../../../src/core/stock/useInputs.ts";

/** Chances of each number of kits from 0 on, until what is left cannot matter. */
function chances(mean: number): number[] {
	const terms = [Math.exp(-mean)];
	for (let k = 1; k < 9 || (terms.at(-1) as number) > 1e-12; k++)
		terms.push(((terms.at(-1) as number) * mean) / k);
	return terms;
}

/**
 * Chance of every amount of use, by going through every combination of kits in
 * every round: slow, and nothing like the program's own way.
 */
export function everyPattern({ rates, days, loads, descaleEvery }: UseInputs): Map<number, number> {
	const rounds = days.flatMap((day) =>
		day.kits.map((_, i) => day.byKind.map((kind) => kind[i] as number)),
	);
	const used = new Map<number, number>();
	const visit = (round: number, run: number, use: number, chance: number) => {
		if (chance < 1e-13) return;
		if (round === rounds.length) {
			const descalings = descaleEvery > 0 ? Math.ceil(run / descaleEvery) : 0;
			const amount = Number((use + descalings * rates.perDescale).toFixed(6));
			used.set(amount, (used.get(amount) ?? 0) + chance);
			return;
		}
		const visitKinds = (kind: number, kits: number, kitUse: number, p: number) => {
			const mean = rounds[round]?.[kind];
			if (mean === undefined) {
				const ofLoads = loads.map(
					(load, i) => (rates.perLoad[i] as number) * Math.ceil(kits / load.kits),
				);
				const ofRound = kits > 0 ? ofLoads.reduce((sum, each) => sum + each, rates.perRound) : 0;
				visit(round + 1, run + (kits > 0 ? 1 : 0), use + kitUse + ofRound, chance * p);
				return;
			}
			chances(mean).forEach((q, n) => {
				visitKinds(kind + 1, kits + n, kitUse + n * (rates.perKit[kind] as number), p * q);
			});
		};
		visitKinds(0, 0, 0, 1);
	};
	visit(0, 0, rates.perDay * days.length, 1);
	return used;
}

export function meanOf(used: ReadonlyMap<number, number>): number {
	return [...used].reduce((sum, [amount, chance]) => sum + amount * chance, 0);
}

export function quantileOf(used: ReadonlyMap<number, number>, level: number): number {
	let sum = 0;
	for (const [amount, chance] of [...used].sort(([a], [b]) => a - b)) {
		sum += chance;
		if (sum >= level) return amount;
	}
	throw new Error("the chances do not reach the level");
}
