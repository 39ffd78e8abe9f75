import type { Plan } from "../../core/plan/plan.ts";
import { say } from "../../core/say.ts";
import { isTyped } from "../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { foldedCell } from "../grid/foldedCell.ts";
import type { GridModel } from "../grid/gridModel.ts";
import { settingKeys } from "../grid/settingsGrid.ts";
import { FIRST_LINE } from "../sheet/cellOf.ts";
import { sheetCells } from "../sheet/sheetCells.ts";
import type { State } from "../state/store.ts";
import { type Findable, findable } from "./findable.ts";

/** The lists made or being made from a plan, by file, for as long as it is the plan. */
const lists = new WeakMap<Plan, Map<string, Promise<readonly Findable[]>>>();

/** True once the cells of a sheet are listed, until the next change of the workbook. */
export function areListed({ plan }: State, file: string): boolean {
	return lists.get(plan)?.has(file) ?? false;
}

/**
 * The cells of a sheet that hold a text. A computed sheet that nobody has looked at is
 * worked out for it; between rows it `pause`s, so that the page can paint and answer.
 */
export function cellsIn(
	state: State,
	file: string,
	pause: () => Promise<void>,
): Promise<readonly Findable[]> {
	const ofPlan = lists.get(state.plan) ?? new Map<string, Promise<readonly Findable[]>>();
	lists.set(state.plan, ofPlan);
	const list = ofPlan.get(file) ?? listed(state, file, pause);
	ofPlan.set(file, list);
	return list;
}

async function listed(state: State, file: string, pause: () => Promise<void>) {
	await pause();
	const model = sheetCells(file).grid(state);
	const cells: Findable[] = [];
	for (let row = 0; row < (model?.rowCount ?? 0); row++) {
		await pause();
		if (model) cells.push(...rowOf(state, file, model, row));
	}
	return cells;
}

function rowOf(state: State, file: string, model: GridModel, row: number): Findable[] {
	if (file === unitSheet.file) return settingOf(state, model, row);
	const line = Number(model.rowName?.(row) ?? row + FIRST_LINE);
	const first = model.cell(row, 0).text;
	return model.columns.flatMap(({ key, label }, at) => {
		const { text } = model.cell(row, at);
		if (text === "") return [];
		const ofRow = isTyped(file) ? say`line ${line}` : at === 0 ? "" : first;
		const place = { file, line, column: key };
		return [{ place, row: ofRow, column: label, text, folded: foldedCell(model, row, at) }];
	});
}

/** A setting is one thing to find: by its name, its value or its default. */
function settingOf(state: State, model: GridModel, row: number): Findable[] {
	const key = settingKeys(state)[row] ?? "";
	if (key === "") return [];
	const [label = "", value = "", unit = "", byDefault = ""] = model.columns.map(
		(_, at) => model.cell(row, at).text,
	);
	const text = value === "" ? say`default: ${byDefault} ${unit}` : `${value} ${unit}`;
	const place = { file: unitSheet.file, line: null, column: key };
	return [findable(place, { column: label, text }, `${label} ${key}`)];
}
