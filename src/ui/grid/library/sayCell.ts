import { type GridModel, spoken } from "../gridModel.ts";

/** Has a screen reader say a cell wherever the focus of the grid is. */
export function sayCell(host: HTMLElement, model: GridModel, row: number, column: number): void {
	const words = spoken(model, row, column);
	for (const part of [host, ...host.querySelectorAll("textarea")])
		part.setAttribute("aria-label", words);
}
