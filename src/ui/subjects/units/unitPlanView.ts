import { say } from "../../../core/say.ts";
import { computedSheets } from "../../../core/sheets/computedSheets.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { migrated } from "../../../io/migrated.ts";
import { el } from "../../dom/el.ts";
import { problemWords } from "../../format/problemWords.ts";
import { computedGrid } from "../../grid/computedGrid.ts";
import type { GridModel } from "../../grid/gridModel.ts";
import { SemanticTable } from "../../grid/library/semanticTable.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { Store } from "../../state/store.ts";
import { planTitle } from "../week/planTitle.ts";
import { weekCells } from "../week/weekCells.ts";
import { weekHeadline } from "../week/weekHeadline.ts";
import type { HeldUnit } from "./heldUnit.ts";
import { filesOf, workbookIn } from "./readUnit.ts";

/**
 * A unit's own plan, to be read: it is made from the unit's files once more, in a place of its
 * own. The workbook that is open, and its draft, are not touched, and nothing here can be changed.
 */
export async function unitPlanView(
	{ row, given }: HeldUnit,
	today: IsoDate | undefined,
	back: HTMLElement,
): Promise<HTMLElement> {
	const title = el("h1", { tabindex: -1 }, row.unit);
	const head = pageHead(
		title,
		say`Read only, from “Several units”: the plan of ${row.unit} as its files have it. The workbook that is open here stays as it is. To change something, open the unit's own workbook.`,
	);
	const files = await filesOf(given);
	if ("refused" in files)
		return el(
			"div",
			{},
			head,
			back,
			...files.refused.map((one) => el("p", { class: "reason" }, problemWords(one))),
		);
	const { workbook } = await workbookIn(files.bytes);
	const { state } = new Store(migrated(workbook), () => today);
	const week = weekCells.grid(state);
	const models: (readonly [string, string, () => GridModel])[] = [
		...(week ? [[planTitle.file, planTitle.title, () => week] as const] : []),
		...computedSheets.flatMap(({ file, title: name }) => {
			const table = state.plan.tables[file];
			return table ? [[file, name, () => computedGrid(table)] as const] : [];
		}),
	];
	const table = new SemanticTable();
	const choice = el(
		"select",
		{},
		...models.map(([file, name]) => el("option", { value: file }, name)),
	);
	const show = () => {
		const found = models.find(([file]) => file === choice.value);
		if (found) table.show(found[2]());
	};
	choice.addEventListener("change", show);
	show();
	const errors = state.plan.problems.filter(({ weight }) => weight === "error");
	const answer = weekHeadline(state);
	return el(
		"div",
		{ class: "unit-plan" },
		head,
		answer !== undefined && el("p", { class: "saying" }, answer),
		el("div", { class: "tools" }, back, el("label", { class: "labelled" }, say`Sheet`, choice)),
		errors.length > 0 &&
			el(
				"ul",
				{ class: "problem-list" },
				...errors.slice(0, 10).map((one) => el("li", {}, problemWords(one))),
			),
		el(
			"div",
			{ class: "as-table open", tabindex: 0, role: "region", "aria-label": say`The unit's sheet` },
			table.element,
		),
	);
}
