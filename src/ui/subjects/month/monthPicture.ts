import { el } from "../../dom/el.ts";
import { pictureFigure } from "../../dom/pictureFigure.ts";
import type * as Pictures from "../../pictures.ts";
import { behindPicture } from "./behindPicture.ts";

/** One question about some days: its answer in words, and where anything is recorded the picture and the table it stands on. */
export interface MonthPicture {
	readonly title: string;
	/** The answer first; also where nothing is recorded. */
	readonly words: string;
	/** How to read the picture. */
	readonly reading?: string;
	readonly draw?: (pictures: typeof Pictures, width: number) => SVGElement;
	readonly table?: { readonly name: string; readonly of: () => HTMLTableElement };
}

/** @param onPaper without the table, for which the page has no room */
export function monthPictureFigure(
	{ title, words, reading, draw, table }: MonthPicture,
	width: number,
	onPaper: boolean,
): HTMLElement {
	return el(
		"section",
		{ class: "month-picture" },
		el("h2", {}, title),
		el("p", { class: "month-answer" }, words),
		draw && pictureFigure((pictures) => draw(pictures, width), title, reading ?? ""),
		!onPaper && table && behindPicture(table.name, table.of()),
	);
}
