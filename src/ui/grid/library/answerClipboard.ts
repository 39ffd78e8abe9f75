import type Handsontable from "handsontable";
import { say } from "../../../core/say.ts";
import { clipboardText } from "../clipboardText.ts";
import type { GridEvents } from "../grid.ts";
import type { GridModel } from "../gridModel.ts";
import { LONGEST_TEXT, pasted } from "../pasted.ts";

/** The grid whose cells are copied and pasted into. */
interface Clipped {
	readonly hot: Pick<Handsontable, "getSelectedLast" | "emptySelectedCells">;
	model(): GridModel;
	/** The texts of all cells, as an editor opens with them. */
	readonly data: readonly (readonly string[])[];
	editing(): boolean;
	readonly events: GridEvents;
}

/** What was last copied here: it stands in the clear form and leaves nothing to ask. */
let copied: string | undefined;

/** Copies, cuts and pastes whole blocks of cells as plain text, in the place of the library's own clipboard. */
export function answerClipboard(host: HTMLElement, signal: AbortSignal, grid: Clipped): void {
	const { hot, data, events } = grid;
	const onPaste = (event: ClipboardEvent) => {
		const text = event.clipboardData?.getData("text/plain") ?? "";
		if (grid.editing() && text.length <= LONGEST_TEXT) return;
		event.preventDefault();
		event.stopImmediatePropagation();
		const model = grid.model();
		const [row = 0, column = 0, endRow = row, endColumn = column] = hot.getSelectedLast() ?? [];
		const { cells, told } = pasted(
			text,
			Math.min(row, endRow),
			Math.min(column, endColumn),
			model.columns.length - 1,
		);
		const open = cells.filter((cell) => isOpen(model, cell.row, cell.column));
		const locked = cells.length - open.length;
		const left =
			locked === 1
				? say`1 pasted cell was left out: it is computed.`
				: say`${locked} pasted cells were left out: they are computed.`;
		const words = locked === 0 ? told : [...told, left];
		if (text !== copied && open.length > 0) return events.pasted(open, words);
		if (open.length > 0) events.edited(open);
		events.told(words);
	};
	const onCopy = (event: ClipboardEvent) => {
		if (grid.editing()) return;
		const range = hot.getSelectedLast();
		if (!range) return;
		event.preventDefault();
		event.stopImmediatePropagation();
		const [row, column, endRow, endColumn] = range as [number, number, number, number];
		copied = clipboardText(data, row, column, endRow, endColumn);
		event.clipboardData?.setData("text/plain", copied);
		if (event.type === "cut") hot.emptySelectedCells();
	};
	const options = { capture: true, signal };
	host.addEventListener("paste", onPaste, options);
	host.addEventListener("copy", onCopy, options);
	host.addEventListener("cut", onCopy, options);
}

/** Rows beyond the last become new ones, so they are open wherever their column is. */
function isOpen(model: GridModel, row: number, column: number): boolean {
	return model.cell(Math.min(row, model.rowCount - 1), column).kind === "typed";
}
