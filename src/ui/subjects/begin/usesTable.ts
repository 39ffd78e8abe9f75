import { choiceOf, hasUses, usesFor } from "../../../core/edit/begin/withUsesTaken.ts";
import { say } from "../../../core/say.ts";
import { usageSheet } from "../../../core/sheets/usage.ts";
import type { ProposedUse } from "../../../core/stock/proposedUses.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { markWords } from "../../sheet/markWords.ts";

/** The proposed uses, each to be taken, changed or left. */
export interface UsesTable {
	readonly element: HTMLElement;
	/** What is ticked, with the quantities as they stand. */
	choice(): string;
}

const { item, basis, quantity } = usageSheet.columns;

/** Undefined where the workbook says already what is used up. */
export function usesTable(workbook: Workbook): UsesTable | undefined {
	if (hasUses(workbook)) return undefined;
	const lines = usesFor(workbook).map(useLine);
	const head = (words: string) => el("th", { scope: "col" }, words);
	return {
		choice: () =>
			choiceOf(
				lines.flatMap(({ take, amount }, at) =>
					take.checked ? [[at, amount.value] as const] : [],
				),
			),
		element: el(
			"details",
			{ class: "proposal uses" },
			el("summary", {}, say`What these steps use up: take, change or leave each line`),
			el(
				"table",
				{ class: "brief" },
				el(
					"thead",
					{},
					el(
						"tr",
						{},
						head(item.label),
						head(basis.label),
						head(quantity.label),
						head(say`Source`),
					),
				),
				el("tbody", {}, ...lines.map(({ row }) => row)),
			),
		),
	};
}

function useLine(use: ProposedUse) {
	const take = el("input", { type: "checkbox", checked: true });
	const amount = el("input", {
		type: "text",
		inputmode: "decimal",
		value: shownPlain(use.quantity),
		"aria-label": say`Quantity of ${use.item}`,
		class: "count",
	});
	const row = el(
		"tr",
		{},
		el("th", { scope: "row" }, el("label", {}, take, " ", use.item)),
		el("td", {}, shownWord(use.basis)),
		el("td", {}, amount, " ", use.measure),
		el("td", {}, say`${use.note}; ${markWords(use.source.mark)}`),
	);
	return { row, take, amount };
}
