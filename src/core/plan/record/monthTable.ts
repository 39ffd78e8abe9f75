import { derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import type { ComputedRow, ComputedTable } from "../../computedTable.ts";
import { countTimes } from "../../countTimes.ts";
import { givenFigure } from "../../read/cellFigure.ts";
import { type ReadWorkbook, readWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type MonthMeasure, monthMeasures, monthSheet } from "../../sheets/month.ts";
import { type PastPlansRow, pastPlansSheet } from "../../sheets/pastPlans.ts";
import { type Measure, planMeasures } from "../../sheets/planMeasures.ts";
import { total } from "../../total.ts";
import type { IsoDate } from "../../values/date.ts";
import { daysOfMonth, type IsoMonth } from "../../values/isoMonth.ts";
import type { Workbook } from "../../workbook.ts";
import { itemRows } from "./itemRows.ts";
import { keptPlans } from "./keptPlans.ts";
import { measuresDone } from "./measuresDone.ts";
import type { Recorded } from "./recorded.ts";

type Row = ComputedRow<typeof monthSheet>;

/** The report of a month: what was planned for its days, and what the record says was done. */
export function monthTable(workbook: Workbook, month: IsoMonth): ComputedTable<typeof monthSheet> {
	return spanTable(readWorkbook(workbook), daysOfMonth(month));
}

/** The same of whatever days. */
export function spanTable(
	read: ReadWorkbook,
	days: readonly IsoDate[],
): ComputedTable<typeof monthSheet> {
	const done = measuresDone(read, days);
	return {
		sheet: monthSheet,
		rows: [
			...monthMeasures.map((measure) => measureRow(read, days, measure, done[measure])),
			...itemRows(read, days),
		],
	};
}

interface Planned {
	readonly unit: string;
	readonly expected: Figure | undefined;
	readonly setAside: Figure | undefined;
}

function measureRow(
	read: ReadWorkbook,
	days: readonly IsoDate[],
	measure: MonthMeasure,
	{ done, note }: Recorded,
): Row {
	const { unit, expected, setAside } = planned(read, days, measure);
	return {
		measure: nameFigure(say`Of`, measure),
		unit: nameFigure(say`Unit`, unit),
		planned_expected: expected ?? blank(say`Planned, average`),
		planned_set_aside: setAside ?? blank(say`Planned, prepare for`),
		done: done ?? blank(say`Done`),
		note: nameFigure(say`Note`, note),
	};
}

function blank(label: string): Figure<null> {
	return nameFigure(label, null);
}

/** A measure of the plans that were kept, over some days; and what hangs on one. */
function planned(read: ReadWorkbook, days: readonly IsoDate[], measure: MonthMeasure): Planned {
	const { settings } = read;
	switch (measure) {
		case "needs_none_ready": {
			const { expected } = kept(read, days, "kits_used");
			const accepted = expected && derive(needsAccepted, { count: expected, each: perUse(read) });
			return { unit: say`times`, expected: accepted, setAside: undefined };
		}
		case "kits_failed":
			return { unit: say`kits`, expected: undefined, setAside: undefined };
		case "descalings": {
			const { expected } = kept(read, days, "rounds");
			const { outcome } = settings.descale_every_rounds;
			if (!expected || !outcome.ok || outcome.value === 0)
				return { unit: say`descalings`, expected: undefined, setAside: undefined };
			const each = nameFigure(say`Descalings for each round`, 1 / outcome.value);
			return {
				unit: say`descalings`,
				expected: derive(descalingsPlanned, { count: expected, each }),
				setAside: undefined,
			};
		}
		default:
			return { unit: planMeasures[measure].unit, ...kept(read, days, measure) };
	}
}

const needsAccepted = countTimes(
	"needs_accepted",
	say`Times no kit is ready when needed, accepted`,
	say`times`,
	{ label: say`Kits used, average`, unit: say`kits` },
	{ label: say`Accepted for each use`, unit: say`times/use` },
);

const descalingsPlanned = countTimes(
	"descalings_planned",
	say`Descalings, average`,
	say`descalings`,
	{ label: say`Rounds that run, average`, unit: say`rounds` },
	{ label: say`Descalings for each round`, unit: say`descalings/round` },
);

const PER_THOUSAND = 1000;

function perUse({ settings }: ReadWorkbook): Figure {
	const { outcome } = settings.unmet_per_1000_uses;
	return {
		...settings.unmet_per_1000_uses,
		label: say`Accepted for each use`,
		unit: say`times/use`,
		outcome: outcome.ok ? { ok: true, value: outcome.value / PER_THOUSAND } : outcome,
	};
}

/** The kept plans of the days, added up; undefined where no plan was kept. */
function kept(
	{ tables }: ReadWorkbook,
	days: readonly IsoDate[],
	measure: Measure,
): Omit<Planned, "unit"> {
	const byDay = keptPlans(tables)(measure);
	const rows = days.flatMap((day) => byDay.get(day) ?? []);
	const sum = (column: keyof PastPlansRow & ("expected" | "set_aside")) => {
		const figures = rows.flatMap((row) => {
			const figure = givenFigure(pastPlansSheet, row, column);
			return figure ? [[row.value.date, figure] as const] : [];
		});
		const { label, unit } = cellLabels(column);
		return figures.length === 0
			? undefined
			: derive(total(`planned_${column}`, label, unit), {
					parts: gather(label, unit, Object.fromEntries(figures)),
				});
	};
	return { expected: sum("expected"), setAside: sum("set_aside") };
}

function cellLabels(column: "expected" | "set_aside") {
	return pastPlansSheet.columns[column];
}
