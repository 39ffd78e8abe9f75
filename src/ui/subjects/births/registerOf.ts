import { valueIn } from "../../../core/outcome.ts";
import {
	type RegisterFigures,
	registerFigures,
} from "../../../core/plan/births/registerFigures.ts";
import { type ReadWorkbook, readWorkbook } from "../../../core/read/readWorkbook.ts";
import type { State } from "../../state/store.ts";

/** The register of births and what it teaches, as the plan sees it. */
export interface Register {
	readonly read: ReadWorkbook;
	readonly figures: RegisterFigures;
	readonly firstDay: string;
}

/** Undefined while the plan has no first day. */
export function registerOf({ workbook }: State): Register | undefined {
	const read = readWorkbook(workbook);
	const firstDay = valueIn(read.settings.plan_start);
	if (firstDay === undefined) return undefined;
	return { read, figures: registerFigures(read, firstDay), firstDay };
}
