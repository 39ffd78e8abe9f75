import { memoizeByObject } from "../../core/memoize.ts";
import type { Method } from "../../core/methods/method.ts";
import { valueIn } from "../../core/outcome.ts";
import { isMixed } from "../../core/plan/chlorine/litresOfPreparation.ts";
import { kindNames } from "../../core/plan/kits/kindFigures.ts";
import { treatedByKind } from "../../core/plan/methods/treatedKits.ts";
import { readWorkbook } from "../../core/read/readWorkbook.ts";
import type { Workbook } from "../../core/workbook.ts";
import type { State } from "./store.ts";

/** By which methods the unit's pieces go. */
export interface Ways {
	/** Empty where that is not known. */
	readonly treated: ReadonlySet<Method>;
	/** Whether rounds mix any chlorine solution; also where that is not known. */
	readonly isMixed: boolean;
}

export function waysOf({ workbook }: Pick<State, "workbook">): Ways {
	return waysOnce(workbook);
}

const waysOnce = memoizeByObject((workbook: Workbook): Ways => {
	const read = readWorkbook(workbook);
	const kinds = valueIn(treatedByKind(read, kindNames(read))) ?? [];
	return {
		treated: new Set(kinds.flatMap(({ methods }) => methods)),
		isMixed: isMixed(read),
	};
});
