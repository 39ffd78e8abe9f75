import { valueIn } from "../../outcome.ts";
import { readSettings } from "../../read/readSettings.ts";
import { unitSheet } from "../../sheets/unit.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import type { Workbook } from "../../workbook.ts";
import { settingEntry } from "../begin/settingEntry.ts";

/** The steps of the weekly routine, in their order; their words stand in the workbook's settings. */
export const routineSteps = [
	"days",
	"counts",
	"orders",
	"usage",
	"move",
	"changes",
	"print",
] as const;

export type RoutineStep = (typeof routineSteps)[number];

/** How far the weekly routine has come. */
export interface Routine {
	/** First day of the period that it prepares. */
	readonly prepares: IsoDate;
	/** Whether the plan has moved on to that period. */
	readonly hasMoved: boolean;
	/** Days of the period before it, in order. */
	readonly past: readonly IsoDate[];
	readonly done: ReadonlySet<RoutineStep>;
}

const kept = settingEntry("monday_done");

/**
 * How far the routine has come: the workbook keeps the first day that is prepared and the
 * steps that are ticked, so that ticks hold over visits and no longer than their week.
 *
 * @returns undefined where the first day of the plan or its days cannot be read
 */
export function routine(workbook: Workbook): Routine | undefined {
	const { settings } = readSettings(workbook.tables[unitSheet.file]);
	const [first, days] = [valueIn(settings.plan_start), valueIn(settings.plan_days)];
	if (first === undefined || days === undefined) return undefined;
	const [week, ...words] = kept.read(workbook).split(/\s+/);
	const hasMoved = week === first;
	const prepares = hasMoved ? first : addDays(first, days);
	const from = addDays(prepares, -days);
	const done = routineSteps.filter((step) => words.includes(step));
	return {
		prepares,
		hasMoved,
		past: Array.from({ length: days }, (_, day) => addDays(from, day)),
		done: new Set(week === prepares ? done : []),
	};
}

/** The workbook with a step of its routine ticked, or no longer. */
export function withTick(workbook: Workbook, step: RoutineStep, isDone: boolean): Workbook {
	const now = routine(workbook);
	if (!now) return workbook;
	const done = routineSteps.filter((each) => (each === step ? isDone : now.done.has(each)));
	return withKept(workbook, [now.prepares, ...done].join(" "));
}

/** The workbook with the routine of the next period begun, without a tick. */
export function withNextRoutine(workbook: Workbook): Workbook {
	return withKept(workbook, "");
}

function withKept(workbook: Workbook, text: string): Workbook {
	// A day and a few short words are a note at any time.
	return kept.write(workbook, text) as Workbook;
}
