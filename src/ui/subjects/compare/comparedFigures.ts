import type { Figure } from "../../../core/calculation.ts";
import type { Column } from "../../../core/column.ts";
import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import type { Sheet } from "../../../core/sheet.ts";
import { costsSheet } from "../../../core/sheets/costs.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { kitCoverSheet } from "../../../core/sheets/kitCover.ts";
import { leversSheet } from "../../../core/sheets/levers.ts";
import { orderSheet } from "../../../core/sheets/order.ts";
import { weekTotalSheet } from "../../../core/sheets/weekTotal.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { weekMeasures } from "../week/weekMeasures.ts";

/** A figure that both sides have, and how it is shown. */
export interface Compared {
	readonly group: string;
	readonly label: string;
	readonly unit: string;
	/** Says how it is rounded. */
	readonly column: Column<unknown>;
	/** Only where nobody could wish for more of it. */
	readonly lessIsBetter?: boolean;
	readonly left: Figure<unknown> | undefined;
	readonly right: Figure<unknown> | undefined;
	/** What is asked "why?" in place of the two, where they are only words. */
	readonly why?: readonly [Figure<unknown> | undefined, Figure<unknown> | undefined];
}

/** The plan's main figures of two sides, in the order of the work. */
export function comparedFigures(left: State, right: State): Compared[] {
	return [...kits(left, right), ...work(left, right), ...money(left, right), ...order(left, right)];
}

type Find<S extends Sheet> = (state: State) => ComputedRow<S> | undefined;

function kits(left: State, right: State): Compared[] {
	const kinds = new Set(
		[left, right].flatMap((state) =>
			rowsOf(state.plan, leversSheet).map((row) => wordIn(row.kind)),
		),
	);
	return [...kinds].flatMap((kind) => {
		const group = kind === "" ? say`Kits` : kind;
		const asItIs: Find<typeof leversSheet> = (state) =>
			rowsOf(state.plan, leversSheet).find((row) => wordIn(row.kind) === kind);
		const enough: Find<typeof kitCoverSheet> = (state) =>
			rowsOf(state.plan, kitCoverSheet).find(
				(row) => wordIn(row.kind) === kind && wordIn(row.enough) === "yes",
			);
		const lever = (key: keyof typeof leversSheet.columns, label: string, less = false) => ({
			...compared(left, right, (state) => asItIs(state)?.[key], leversSheet.columns[key]),
			group,
			label,
			lessIsBetter: less,
		});
		return [
			lever("kits_needed", say`Kits needed`),
			{
				...compared(
					left,
					right,
					(state) => enough(state)?.deciding,
					kitCoverSheet.columns.deciding,
				),
				group,
				why: [asItIs(left)?.kits_needed, asItIs(right)?.kits_needed],
			},
			lever("kits", say`Kits in service`),
			lever("unmet_per_1000_uses", say`Times no kit is ready when needed`, true),
			lever("turnaround_minutes", say`Until the kits of a round are ready`),
		];
	});
}

function work(left: State, right: State): Compared[] {
	return weekMeasures.flatMap((measure) => {
		if (measure.total === undefined) return [];
		const find: Find<typeof weekTotalSheet> = (state) =>
			rowsOf(state.plan, weekTotalSheet).find((row) => wordIn(row.measure_of) === measure.total);
		const key = measure.totalIsExpected ? "expected" : "set_aside";
		const column = dayPlanSheet.columns[measure.large];
		return [
			{
				...compared(left, right, (state) => find(state)?.[key], column),
				group: say`To prepare for in the whole period`,
				label: measure.label,
				unit: measure.unit || wordIn((find(left) ?? find(right))?.unit),
			},
		];
	});
}

function money(left: State, right: State): Compared[] {
	const find: Find<typeof costsSheet> = (state) => rowsOf(state.plan, costsSheet)[0];
	const unit = unitSetting(right, "currency") || unitSetting(left, "currency") || "";
	return (["per_week", "per_birth", "per_kit"] as const).map((key) => ({
		...compared(left, right, (state) => find(state)?.[key], costsSheet.columns[key]),
		group: say`What is used up costs`,
		unit,
	}));
}

function order(left: State, right: State): Compared[] {
	const items = new Set(
		[left, right].flatMap((state) => rowsOf(state.plan, orderSheet).map((row) => wordIn(row.item))),
	);
	return [...items]
		.map((item) => ({
			...compared(
				left,
				right,
				(state) =>
					rowsOf(state.plan, orderSheet).find((row) => wordIn(row.item) === item)?.order_packs,
				orderSheet.columns.order_packs,
			),
			group: say`To order`,
			label: item,
		}))
		.filter((each) => [each.left, each.right].some((figure) => !isNothing(figure)));
}

function isNothing(figure: Figure<unknown> | undefined): boolean {
	return figure === undefined || (figure.outcome.ok && figure.outcome.value === 0);
}

function compared(
	left: State,
	right: State,
	find: (state: State) => Figure<unknown> | undefined,
	column: Column<unknown>,
): Omit<Compared, "group"> {
	const { label, unit } = column;
	return { label, unit, column, left: find(left), right: find(right) };
}
