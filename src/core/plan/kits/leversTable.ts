import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { oneByOne } from "../../kits/cover.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { unmetPer1000 } from "../../kits/unmetPer1000.ts";
import { say } from "../../say.ts";
import { leversSheet } from "../../sheets/levers.ts";
import { definition } from "../../source.ts";
import { sources } from "../../sources.ts";
import type { IsoDate } from "../../values/date.ts";
import { dayFigures } from "../dayFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { type Change, changes } from "./changes.ts";
import { type CoverFigures, coverFigures } from "./coverFigures.ts";

const kitsThen = calculation<{ kits: number; more: number }, number>({
	key: "kits_then",
	label: say`Kits in service`,
	unit: say`kits`,
	formula: say`Kits in service now, and those added.`,
	source: definition,
	inputs: {
		kits: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		more: { label: say`Kits more`, unit: say`kits`, min: 0 },
	},
	example: { inputs: { kits: 4, more: 1 }, result: 5, within: 0 },
	compute: ({ kits, more }) => kits + more,
});

const unmetThen = calculation<{ kits: number; reprocessing: Reprocessing }, number>({
	key: "unmet_then",
	label: say`Times no kit is ready when needed`,
	unit: say`per 1,000 uses`,
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
	unit: say`per 1,000 uses`,
	formula: say`Times no kit is ready when needed now, less those with the change.`,
	source: definition,
	inputs: {
		now: { label: say`Times no kit is ready when needed, now`, unit: say`per 1,000 uses` },
		changed: {
			label: say`Times no kit is ready when needed, with the change`,
			unit: say`per 1,000 uses`,
		},
	},
	example: { inputs: { now: 1.2, changed: 0.4 }, result: 0.8, within: 1e-12 },
	compute: ({ now, changed }) => now - changed,
});

/** What each single change would spare (one-at-a-time sensitivity), for each kind of kit; of the hours tried for a round, the best. */
export function leversTable(
	unit: UnitFigures,
	dates: readonly IsoDate[],
): ComputedTable<typeof leversSheet> {
	return onDemand(leversSheet, () => {
		const covers = changes(unit).map((change) => ({
			change,
			cover: coverFigures(change.unit, dayFigures(change.unit, dates)),
		}));
		return unit.kinds.flatMap((_, kind) => rowsOfKind(covers, kind));
	});
}

interface Lever {
	readonly change: Change;
	readonly cover: CoverFigures;
}

function rowsOfKind(levers: readonly Lever[], kind: number): ComputedRow<typeof leversSheet>[] {
	const [now, ...others] = levers.map((lever) => ({ lever, unmet: unmetOf(lever, kind) }));
	if (!now) return [];
	const rows = others
		// A change with which the rounds do not fit is none.
		.filter(({ unmet }) => unmet.outcome.ok)
		.map(({ lever, unmet }) => ({
			lever,
			unmet,
			spared: derive(avoided, { now: now.unmet, changed: unmet }),
		}))
		.sort((a, b) => valueOr(b.spared, -1) - valueOr(a.spared, -1));
	const bestHour = rows.find(({ lever }) => lever.change.oneOfMany);
	return [
		leverRow(now.lever, kind, now.unmet, nameFigure(say`Avoided`, null)),
		...rows
			.filter((row) => !row.lever.change.oneOfMany || row === bestHour)
			.map((row) =>
				leverRow(
					row.lever,
					kind,
					row.unmet,
					valueOr(row.spared, 0) < 0 ? nameFigure(say`Avoided`, null) : row.spared,
				),
			),
	];
}

function valueOr(figure: Figure, otherwise: number): number {
	return figure.outcome.ok ? figure.outcome.value : otherwise;
}

function kitsOf({ change, cover }: Lever, kind: number): Figure {
	const kits = (cover.kinds[kind] as CoverFigures["kinds"][number]).kitsInService;
	return derive(kitsThen, { kits, more: nameFigure(say`Kits more`, change.moreKits) });
}

function unmetOf(lever: Lever, kind: number): Figure {
	const { reprocessing } = lever.cover.kinds[kind] as CoverFigures["kinds"][number];
	return derive(unmetThen, { kits: kitsOf(lever, kind), reprocessing });
}

function leverRow(
	lever: Lever,
	kind: number,
	unmet: Figure,
	spared: Figure<number | null>,
): ComputedRow<typeof leversSheet> {
	const { name, kitsNeeded } = lever.cover.kinds[kind] as CoverFigures["kinds"][number];
	return {
		kind: nameFigure(say`Kind`, name),
		change: nameFigure(say`Change`, lever.change.name),
		kits: kitsOf(lever, kind),
		turnaround_minutes: lever.cover.turnaround,
		unmet_per_1000_uses: unmet,
		avoided_per_1000_uses: spared,
		kits_needed: kitsNeeded,
	};
}
