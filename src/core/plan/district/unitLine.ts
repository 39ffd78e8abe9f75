import { calculation, derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import type { Problem } from "../../problem.ts";
import { asNote } from "../../read/asNote.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { dayPlanSheet } from "../../sheets/dayPlan.ts";
import { orderSheet } from "../../sheets/order.ts";
import { type UnitState, unitsSheet } from "../../sheets/units.ts";
import { weekTotalSheet } from "../../sheets/weekTotal.ts";
import { definition } from "../../source.ts";
import type { KindCover } from "../kits/coverFigures.ts";
import { unmetWithKits } from "../kits/kitCoverTable.ts";
import type { Plan } from "../plan.ts";
import { rowsOf } from "../rowsOf.ts";
import { safetyTruths } from "../today/safetyTruths.ts";

type Row = ComputedRow<typeof unitsSheet>;

/** Which unit, and where its workbook lies. */
export interface Whose {
	readonly unit: string;
	readonly path: string;
}

const { columns } = unitsSheet;

export const worst = calculation<{ kinds: readonly number[] }, number>({
	key: "worst_of_kinds",
	label: columns.unmet_per_1000_uses.label,
	unit: columns.unmet_per_1000_uses.unit,
	formula: say`The largest of all kinds of kit.`,
	source: definition,
	inputs: { kinds: { label: say`Kinds of kit`, unit: columns.unmet_per_1000_uses.unit } },
	example: { inputs: { kinds: [0.2, 3, 1] }, result: 3, within: 0 },
	compute: ({ kinds }) => Math.max(...kinds),
});

/**
 * A unit as one line of its district's list.
 *
 * @param problems of reading and planning together, each once
 */
export function unitLine(
	whose: Whose,
	plan: Plan,
	read: ReadWorkbook,
	problems: readonly Problem[],
): Row {
	const [day] = rowsOf(plan, dayPlanSheet);
	const births = rowsOf(plan, weekTotalSheet).find(
		(row) => valueIn(row.measure_of) === "births",
	)?.expected;
	const items = rowsOf(plan, orderSheet).map((row) => ({
		item: valueIn(row.item) as string,
		runsOut: valueIn(row.run_out_on) ?? "",
		counted: valueIn(row.last_counted) as string,
	}));
	const first = earliest(items.map(({ runsOut }) => runsOut));
	return {
		...blankLine(whose, problems),
		first_day: read.settings.plan_start,
		days: read.settings.plan_days,
		...(births && { births_expected: births }),
		...(day && { kits_needed: day.kits_needed, kits_in_service: day.kits_in_service }),
		unmet_per_1000_uses: unmet(plan.kinds),
		first_run_out: nameFigure(columns.first_run_out.label, first),
		first_run_out_item: nameFigure(
			columns.first_run_out_item.label,
			items.find(({ runsOut }) => runsOut === first)?.item ?? "",
		),
		last_counted: nameFigure(
			columns.last_counted.label,
			earliest(items.map(({ counted }) => counted)),
		),
		...stateOf(plan, read, problems),
	};
}

/** The line of a unit whose files could not be read. */
export function unreadLine(whose: Whose, problems: readonly Problem[]): Row {
	const why = firstError(problems) ?? say`Nothing of this unit could be read.`;
	return { ...blankLine(whose, problems), ...inState("not_read", why) };
}

function blankLine({ unit, path }: Whose, problems: readonly Problem[]): Row {
	const blank = (key: keyof typeof columns) => nameFigure(columns[key].label, null);
	const errors = problems.filter(({ weight }) => weight === "error").length;
	return {
		unit: nameFigure(columns.unit.label, unit),
		path: nameFigure(columns.path.label, path),
		first_day: blank("first_day"),
		days: blank("days"),
		births_expected: blank("births_expected"),
		kits_needed: blank("kits_needed"),
		kits_in_service: blank("kits_in_service"),
		unmet_per_1000_uses: blank("unmet_per_1000_uses"),
		problems: nameFigure(columns.problems.label, errors),
		advice: nameFigure(columns.advice.label, problems.length - errors),
		first_run_out: blank("first_run_out"),
		first_run_out_item: nameFigure(columns.first_run_out_item.label, ""),
		orders_late: blank("orders_late"),
		last_counted: blank("last_counted"),
		...inState("not_read", ""),
	};
}

/** No kind, or no kit of one: then there is no such number. */
function unmet(kinds: readonly KindCover[]): Figure<number | null> {
	if (kinds.length === 0) return nameFigure(columns.unmet_per_1000_uses.label, null);
	const each = kinds.map(({ name, kitsInService, reprocessing }, k) => [
		`${k + 1} ${name}`,
		derive(unmetWithKits, { kits: kitsInService, reprocessing }),
	]);
	const { label, unit } = worst;
	return derive(worst, { kinds: gather<number>(label, unit, Object.fromEntries(each)) });
}

/** Of each item there is one of them at most. */
const LATE = new Set(["order-late", "short-before-order"]);

function stateOf(plan: Plan, read: ReadWorkbook, problems: readonly Problem[]) {
	const day = valueIn(read.settings.plan_start);
	const truths = day === undefined ? [] : safetyTruths(plan, read, day);
	const late = truths.flatMap((truth) => truth.problems.filter(({ code }) => LATE.has(code)));
	const orders_late = nameFigure(columns.orders_late.label, plan.made ? late.length : null);
	if (!plan.made)
		return {
			orders_late,
			...inState("not_planned", firstError(problems) ?? say`The plan was not made.`),
		};
	const messages = truths.flatMap((truth) => truth.problems.map(({ message }) => message));
	const [most, ...more] = messages;
	if (most === undefined)
		return { orders_late, ...inState("in_order", say`Nothing needs to be done now.`) };
	const words = more.length === 0 ? most : say`${most} And ${more.length} more.`;
	return { orders_late, ...inState("look", words) };
}

function inState(state: UnitState, inWords: string) {
	return {
		state: nameFigure(columns.state.label, state),
		in_words: nameFigure(columns.in_words.label, asNote(inWords)),
	};
}

function firstError(problems: readonly Problem[]): string | undefined {
	return problems.find(({ weight }) => weight === "error")?.message;
}

function earliest(days: readonly string[]): string | null {
	return days.filter((day) => day !== "").sort()[0] ?? null;
}
