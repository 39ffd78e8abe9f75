import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { firstBest } from "../../firstBest.ts";
import { oneByOne } from "../../kits/cover.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { unmetPer1000 } from "../../kits/unmetPer1000.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { LEAST_UNMET, leversSheet } from "../../sheets/levers.ts";
import { definition } from "../../source.ts";
import { sources } from "../../sources.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { changes } from "./changes.ts";
import type { CoverFigures } from "./coverFigures.ts";
import { DaysTried } from "./daysTried.ts";
import { Lever } from "./lever.ts";

const unmetThen = calculation<{ kits: number; reprocessing: Reprocessing }, number>({
	key: "unmet_then",
	label: say`Times no kit is ready when needed`,
	unit: say`per 1\u202f000 uses`,
	formula: say`As for “How many kits are enough”, with the kits in service.`,
	source: sources.palm,
	inputs: {
		kits: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		reprocessing: { label: say`When used kits come back`, unit: "" },
	},
	example: {
		// Of a Poisson count of mean 0.6 × 110 ÷ 1440, the chance of at least 3.
		inputs: {
			kits: 3,
			reprocessing: oneByOne,
		},
		result: 0.0155053,
		within: 1e-7,
	},
	compute: ({ kits, reprocessing }) => unmetPer1000(kits, reprocessing),
});

const avoided = calculation<{ now: number; changed: number }, number>({
	key: "avoided",
	label: say`Avoided`,
	unit: say`per 1\u202f000 uses`,
	formula: say`Times no kit is ready when needed now, less those with the change.`,
	source: definition,
	inputs: {
		now: { label: say`Times no kit is ready when needed, now`, unit: say`per 1\u202f000 uses` },
		changed: {
			label: say`Times no kit is ready when needed, with the change`,
			unit: say`per 1\u202f000 uses`,
		},
	},
	example: { inputs: { now: 1.2, changed: 0.4 }, result: 0.8, within: 1e-12 },
	compute: ({ now, changed }) => now - changed,
});

/** In the place of what a change spares, where nobody knows how it is now. */
const NONE_SPARED = -1;

/** What each single change would spare (one-at-a-time sensitivity), for each kind of kit; of the hours tried for a round, the best. */
export function leversTable(
	unit: UnitFigures,
	days: readonly DayFigures[],
	cover: CoverFigures,
): ComputedTable<typeof leversSheet> {
	return onDemand(leversSheet, () => {
		const tried = new DaysTried(days);
		const [now, ...others] = changes(unit).map((change) => new Lever(change, unit, tried, cover));
		const fitting = others.filter(({ couldFit }) => couldFit);
		return now ? unit.kinds.flatMap((_, kind) => rowsOfKind(now, fitting, kind)) : [];
	});
}

function rowsOfKind(
	now: Lever,
	others: readonly Lever[],
	kind: number,
): ComputedRow<typeof leversSheet>[] {
	const unmetNow = unmetOf(now, kind);
	const spared = (lever: Lever): Spared[] => {
		const unmet = unmetOf(lever, kind);
		// A change with which the rounds do not fit is none.
		if (!unmet.outcome.ok) return [];
		return [{ lever, unmet, spared: derive(avoided, { now: unmetNow, changed: unmet }) }];
	};
	const hours = couldSpare(now, kind, unmetNow)
		? others.filter(({ change }) => change.oneOfMany)
		: [];
	const best = firstBest(
		hours,
		(lever) => mostSpared(unmetNow, lever.leastUnmet(kind)),
		(lever) => spared(lever).map((row) => ({ row, value: valueOr(row.spared, NONE_SPARED) }))[0],
		(lever) => mostSpared(unmetNow, lever.leastUnmetInRounds(kind)),
	);
	const rows = others
		.filter(({ change }) => !change.oneOfMany)
		.flatMap(spared)
		.concat(best ? [best.row] : [])
		.sort((a, b) => valueOr(b.spared, NONE_SPARED) - valueOr(a.spared, NONE_SPARED));
	return [
		leverRow(now, kind, unmetNow, nameFigure(say`Avoided`, null)),
		...rows.map((row) =>
			leverRow(
				row.lever,
				kind,
				row.unmet,
				valueOr(row.spared, 0) < 0 ? nameFigure(say`Avoided`, null) : row.spared,
			),
		),
	];
}

/** Whether another hour could: not without kits, nor where hardly ever none is ready. */
function couldSpare(now: Lever, kind: number, unmetNow: Figure): boolean {
	const kits = valueIn(now.kits(kind));
	return kits !== 0 && valueOr(unmetNow, LEAST_UNMET) >= LEAST_UNMET;
}

interface Spared {
	readonly lever: Lever;
	readonly unmet: Figure;
	readonly spared: Figure;
}

function valueOr(figure: Figure, otherwise: number): number {
	return figure.outcome.ok ? figure.outcome.value : otherwise;
}

function unmetOf(lever: Lever, kind: number): Figure {
	const { reprocessing } = lever.kind(kind);
	return derive(unmetThen, { kits: lever.kits(kind), reprocessing });
}

/** Not less than a change spares; found sooner. What is less by rounding only is let through. */
function mostSpared(now: Figure, leastUnmet: number): number {
	return now.outcome.ok ? now.outcome.value - leastUnmet * (1 - 1e-9) : NONE_SPARED;
}

function leverRow(
	lever: Lever,
	kind: number,
	unmet: Figure,
	spared: Figure<number | null>,
): ComputedRow<typeof leversSheet> {
	const { name, kitsNeeded } = lever.kind(kind);
	return {
		kind: nameFigure(say`Kind`, name),
		change: nameFigure(say`Change`, lever.change.name),
		kits: lever.kits(kind),
		turnaround_minutes: lever.cover.turnaround,
		unmet_per_1000_uses: unmet,
		avoided_per_1000_uses: spared,
		kits_needed: kitsNeeded,
	};
}
