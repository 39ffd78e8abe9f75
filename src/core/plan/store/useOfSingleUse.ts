import { calculation, derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import type { LevelOfDay } from "../../counts/counts.ts";
import { piecesReplaced } from "../../methods/piecesReplaced.ts";
import { valueIn } from "../../outcome.ts";
import type { Loads } from "../../rounds/loads.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import type { UseInputs } from "../../stock/useInputs.ts";
import { byDate } from "../byDate.ts";
import type { DayDemand } from "../dayDemand.ts";
import { byName } from "../kits/together.ts";
import type { UnitFigures } from "../unitFigures.ts";

export type UsedDay = Pick<DayDemand, "date" | "kinds" | "level">;

interface Inputs {
	readonly uses: readonly number[];
	readonly level: LevelOfDay | null;
}

/** Kits used on a baby on a day, each by itself: what is opened for it does not wait for a round. */
const kitsUsedOnDay = calculation<Inputs, RoundsOfDay>({
	key: "kits_used_on_day",
	label: say`Kits used on a day, each by itself`,
	unit: say`kits`,
	formula: say`Kits of each kind that are used on a baby; those gone out of date are not among them.`,
	source: sources.thinning,
	inputs: {
		uses: { label: say`Kits used, average`, unit: say`kits/day` },
		level: { label: say`Births of the day, forecast`, unit: say`births` },
	},
	example: {
		inputs: { uses: [0.6, 0.1], level: null },
		result: { kind: "after_each_use", kits: [0.7], byKind: [[0.6], [0.1]] },
		within: 1e-12,
	},
	compute: ({ uses, level }) => ({
		kind: "after_each_use",
		kits: [uses.reduce((sum, each) => sum + each, 0)],
		byKind: uses.map((each) => [each]),
		...(level ? { forecast: { level, sure: uses.map(() => [0]) } } : {}),
	}),
});

/** What the use of a piece for single use follows from; undefined where the item is none. */
export function useOfSingleUse(
	unit: UnitFigures,
	item: string,
	days: readonly UsedDay[],
): { readonly [K in keyof UseInputs]: Figure<UseInputs[K]> } | undefined {
	const rates = derive(piecesReplaced, {
		item: nameFigure(say`Item`, item),
		kinds: unit.treated,
	});
	if (valueIn(rates)?.perKit.every((pieces) => pieces === 0) ?? true) return undefined;
	return {
		rates,
		days: byDate(say`Kits used, average`, say`kits`, days, usedOn),
		loads: nameFigure<Loads>(say`Kits in one load of each method`, []),
		descaleEvery: nameFigure(say`Descale every so many rounds that run`, 0),
	};
}

function usedOn({ kinds, level }: UsedDay): Figure<RoundsOfDay> {
	return derive(kitsUsedOnDay, {
		uses: gather(
			say`Kits used, average`,
			say`kits/day`,
			byName(kinds, ({ uses }) => uses),
		),
		level: level ?? nameFigure<LevelOfDay | null>(say`Births of the day, forecast`, null),
	});
}
