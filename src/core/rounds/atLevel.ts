import type { Counts, GivenLevel } from "../counts/counts.ts";
import { levelNodes } from "../counts/levelNodes.ts";
import { mixedOver } from "../counts/mixedOver.ts";
import { spanShape } from "../counts/spanShape.ts";
import { MOST_OBJECTS, memoize, memoizeByObject } from "../memoize.ts";
import { sumOfAll } from "../sumOfAll.ts";
import type { RoundsOfDay } from "./roundsOfDay.ts";

/** The rounds of a day if births came at a multiple of the level that is forecast. */
export function atLevel(rounds: RoundsOfDay, factor: number): RoundsOfDay {
	const { forecast, ...known } = rounds;
	if (!forecast || factor === 1) return known;
	const byKind = rounds.byKind.map((kits, kind) => {
		const sure = forecast.sure[kind] as readonly number[];
		return kits.map((all, i) => given(all, sure[i] as number, factor));
	});
	const kits = kitsOfRounds(byKind, rounds.kits.length);
	return { ...known, kits, byKind };
}

/** The same object for the same level: moments are worked out at a few levels for many items and lists of days. */
export const knownAtLevel = memoizeByObject((rounds: RoundsOfDay) =>
	memoize((factor: number) => atLevel(rounds, factor), undefined, MOST_OBJECTS),
);

/** The kits of one of its rounds alone. */
export function kitsOfRoundAt(
	{ kits, byKind, forecast }: RoundsOfDay,
	round: number,
	factor: number,
): number {
	if (!forecast || factor === 1) return kits[round] as number;
	return sumOfAll(
		byKind.map((all, kind) =>
			given(all[round] as number, forecast.sure[kind]?.[round] as number, factor),
		),
	);
}

const given = (all: number, sure: number, factor: number) => sure + (all - sure) * factor;

/** The kits of all kinds in each round. */
function kitsOfRounds(byKind: readonly (readonly number[])[], rounds: number): readonly number[] {
	const [only] = byKind;
	if (only && byKind.length === 1) return only;
	return Array.from({ length: rounds }, (_, i) =>
		sumOfAll(byKind.map((ofKind) => ofKind[i] as number)),
	);
}

/** Mean kits of a day that go with the level of births. */
export function kitsAtLevel({ kits, forecast }: RoundsOfDay): number {
	if (!forecast) return 0;
	const sum = (list: readonly number[]) => list.reduce((all, each) => all + each, 0);
	return sum(kits) - sum(forecast.sure.map(sum));
}

/** The nodes of a day's level; one where its births are not forecast, or well known. */
export function nodesOfDay(rounds: RoundsOfDay) {
	const shape = rounds.forecast ? spanShape([rounds.forecast.level]) : Number.POSITIVE_INFINITY;
	return levelNodes(shape, kitsAtLevel(rounds));
}

/**
 * Something counted in a day's rounds, mixed over what is not known of its births.
 *
 * The rounds of a day share its level and its own variation.
 *
 * @param count how likely each number is for rounds whose means are known
 */
export function countOverLevel(rounds: RoundsOfDay, count: (known: RoundsOfDay) => Counts): Counts {
	if (!rounds.forecast) return count(rounds);
	const { given } = givenLevel(rounds, count);
	return { ...mixedOver(nodesOfDay(rounds), given.at), given };
}

/** The same at each level, not mixed. */
export function givenLevel(
	rounds: RoundsOfDay,
	count: (known: RoundsOfDay) => Counts,
): { readonly given: GivenLevel } {
	const { level, sure } = rounds.forecast as NonNullable<RoundsOfDay["forecast"]>;
	const at = (factor: number) => count(atLevel(rounds, factor));
	return { given: { level, mean: kitsAtLevel(rounds), alike: `${rounds.byKind} ${sure}`, at } };
}
