import { valueIn } from "../../outcome.ts";
import { advice, nowhere, type Problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { kitRegisterSheet } from "../../sheets/kitRegister.ts";
import { orderSheet } from "../../sheets/order.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Plan } from "../plan.ts";
import { rowsOf } from "../rowsOf.ts";
import { isLate } from "../store/daysLate.ts";
import { keptSince } from "../store/keptSince.ts";
import { kitsOn } from "./kitsOn.ts";
import { type TruthKind, truthKind, truthKinds } from "./truthKind.ts";

/** What is to be known before a round, and where each of it stands. */
export interface SafetyTruth {
	readonly kind: TruthKind;
	readonly problems: readonly Problem[];
}

/**
 * What everybody must know who relies on the plan, the worst first; the one list for every page.
 *
 * @param day of which the kits are told
 */
export function safetyTruths(plan: Plan, read: ReadWorkbook, day: IsoDate): SafetyTruth[] {
	const all = [...noneReady(read, day), ...plan.problems, ...ofOrders(plan, read)];
	return truthKinds.flatMap((kind) => {
		const problems = all.filter((problem) => truthKind(problem) === kind);
		return problems.length === 0 ? [] : [{ kind, problems }];
	});
}

/** What the list waits for longest, worked out an item of the order at a time. */
export function* ordersOneByOne(plan: Plan): Generator<void> {
	for (const { emergency } of rowsOf(plan, orderSheet)) yield void emergency;
}

/** Kits that are recorded, and none of them ready. */
function noneReady(read: ReadWorkbook, day: IsoDate): Problem[] {
	const kits = kitsOn(read, day);
	const recorded = kits.filter((row) => valueIn(row.recorded) !== "no");
	const mayBeReady = kits.some(({ state }) => !state.outcome.ok || state.outcome.value === "ready");
	if (recorded.length === 0 || mayBeReady) return [];
	return [
		advice(
			{ ...nowhere, file: kitRegisterSheet.file },
			{
				code: "no-kit-ready",
				received: "0",
				allowed: say`at least one kit ready`,
				message: say`No kit is ready by what is written down up to ${day}. Decide now what is done if a newborn needs one.`,
			},
		),
	];
}

function ofOrders(plan: Plan, read: ReadWorkbook): Problem[] {
	// Without a first day there is no order.
	const firstDay = valueIn(read.settings.plan_start) as IsoDate;
	const knownSince = keptSince(read.tables, firstDay);
	return rowsOf(plan, orderSheet).flatMap((row, at) => {
		const place = { file: orderSheet.file, line: at + 2, column: "order_by" };
		const [item, by] = [valueIn(row.item) as string, valueIn(row.order_by) ?? ""];
		if (valueIn(row.emergency) === "yes")
			return [
				advice(place, {
					code: "short-before-order",
					received: valueIn(row.run_out_on) as string,
					allowed: say`enough until an order can arrive`,
					message: say`${item} runs out before an order can arrive: find some elsewhere today.`,
				}),
			];
		const packs = valueIn(row.order_packs) ?? 0;
		if (!isLate({ packs, orderBy: by, knownSince, firstDay })) return [];
		return [
			advice(place, {
				code: "order-late",
				received: by,
				allowed: say`an order by ${by}`,
				message: say`${item} should have been ordered by ${by}: order it today.`,
			}),
		];
	});
}
