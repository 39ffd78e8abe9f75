import { el } from "../../dom/el.ts";
import { wideTable } from "./wideTable.ts";

/** The table behind a picture, folded away until somebody asks for the numbers. */
export function behindPicture(words: string, table: HTMLTableElement): HTMLElement {
	return el("details", { class: "behind-picture" }, el("summary", {}, words), wideTable(table));
}
