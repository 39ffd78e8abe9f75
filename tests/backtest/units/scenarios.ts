import { birthsDraw } from "../../reference/draws.ts";
import { openBirths, thinned } from "../thinnedBirths.ts";
import { MONTH, WARM_UP_DAYS } from "./promises.ts";
import type { Known } from "./told.ts";
import type { Unit } from "./unit.ts";

/** Many units of one sort: what each is told, and the births that then come. */
export interface Scenario {
	readonly name: string;
	readonly unit: Omit<Unit, "kits">;
	readonly birthsPerDay: number;
	readonly replicates: number;
	readonly futures: number;
	/** One unit of the sort. */
	one(random: () => number): { readonly known: Known; readonly births: () => readonly number[] };
}

const inRounds = {
	reprocessing: "in_rounds",
	starts: [7 * 60, 14 * 60, 21 * 60],
	minutes: { round: 40, kit: 10, load: 20 },
	kitsInLoad: 3,
	readyLifeDays: 7,
	hands: 1,
	nights: true,
} as const;
const oneByOne = { ...inRounds, reprocessing: "after_each_use" } as const;

const REPLICATES = 100;
const FUTURES = 8;
const NONE = Number.POSITIVE_INFINITY;

/** Births of a steady level, Poisson or of size 5, as the promises' limits name them. */
const drawn: Scenario[] = [NONE, 5].flatMap((size) =>
	[1, 6, 25].flatMap((perDay) =>
		[10, 100].flatMap((kitsPer100) =>
			[0, 14, 56, 180].map((days): Scenario => {
				const sizes = size === NONE ? "Poisson" : "size 5";
				const register = days === 0 ? "no register" : `register of ${days} days`;
				return {
					name: `${sizes}, ${perDay} births a day, ${kitsPer100} kits per 100, ${register}`,
					unit: { ...inRounds, name: "", kitsPer100 },
					birthsPerDay: perDay,
					replicates: REPLICATES,
					futures: FUTURES,
					one: (random) => {
						const births = (count: number) =>
							Array.from({ length: count }, () => birthsDraw(perDay, size, random));
						return {
							known: { birthsPerDay: perDay, register: births(days) },
							births: () => births(WARM_UP_DAYS + MONTH),
						};
					},
				};
			}),
		),
	),
);

const sorts = [
	{ name: "health centre", perDay: 1, kitsPer100: 100 },
	{ name: "demo", perDay: 6, kitsPer100: 10 },
	{ name: "hospital", perDay: 25, kitsPer100: 30 },
];

/** Open daily births thinned to a unit's size: levels that move, weekdays, holidays. */
const open: Scenario[] = sorts.flatMap(({ name, perDay, kitsPer100 }) =>
	[inRounds, oneByOne].flatMap((unit) =>
		[14, 56, 180, 365].map((days): Scenario => {
			const how = unit.reprocessing === "in_rounds" ? "in rounds" : "after each use";
			return {
				name: `open births, ${name} (${perDay} a day), ${how}, register of ${days} days`,
				unit: { ...unit, name, kitsPer100 },
				birthsPerDay: perDay,
				replicates: REPLICATES,
				futures: 2,
				one: (random) => {
					const data = openBirths[
						Math.floor(random() * openBirths.length)
					] as (typeof openBirths)[0];
					// A window only, brought to the unit's size by the mean of the whole.
					const length = days + MONTH;
					const before = Math.max(days, WARM_UP_DAYS);
					const room = data.births.length - before - MONTH;
					const start = before + Math.floor(random() * room);
					const mean = data.births.reduce((sum, count) => sum + count, 0) / data.births.length;
					const window = data.births.slice(start - before, start + MONTH);
					const scale = window.reduce((sum, count) => sum + count, 0) / window.length / mean;
					const here = thinned(window, perDay * scale, random);
					return {
						known: {
							birthsPerDay: perDay,
							register: here.slice(before - days, before),
						},
						births: () => here.slice(before - WARM_UP_DAYS, before + length - days),
					};
				},
			};
		}),
	),
);

export const scenarios: readonly Scenario[] = [...drawn, ...open];
