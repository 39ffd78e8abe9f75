import { say } from "../../../core/say.ts";
import type { TextEditor } from "./textEditor.ts";

/** Padding of the field, as the style sheet has it. */
const SIDES_PX = 16;
const ENDS_PX = 12;
/** What the library calls the state of an editor that is written in. */
const EDITING = "STATE_EDITING";

/** The field keeps its cell's size, so nothing watches how long its text is. */
const sameSize = { init() {}, resize() {}, unObserve() {} };

/** The text field of a cell, with a name for screen readers from its first moment on. */
export function cellEditor(Base: TextEditor): TextEditor {
	return class CellEditor extends Base {
		declare originalValue: unknown;
		/** The text it opened with: the library's original is that of the cell by now. */
		#opened: unknown;

		override init(): void {
			super.init();
			this.autoResize = sameSize;
		}

		override createElements(): void {
			super.createElements();
			this.TEXTAREA.setAttribute("aria-label", say`Text of the cell`);
		}

		/**
		 * The library asks for it some time after a cell was selected: who went on beside the
		 * grid meanwhile, and may be typing there, stays where they are.
		 */
		override focus(): void {
			const { activeElement } = document;
			if (activeElement === document.body || this.#host().contains(activeElement)) super.focus();
		}

		/** It opens with the text that is there now; the library's own is that of when the cell was selected. */
		override beginEditing(text?: string): void {
			this.originalValue = this.instance.getSourceDataAtCell(this.row, this.col);
			this.#opened = this.originalValue;
			super.beginEditing(text);
		}

		/**
		 * Opened and left as it was, a field writes nothing: the cell may have been filled in
		 * beside the grid meanwhile. With Ctrl its text goes into all selected cells.
		 */
		override saveValue(value: string[][], ctrlDown: boolean): void {
			if (ctrlDown || value[0]?.[0] !== this.#opened) super.saveValue(value, ctrlDown);
		}

		/**
		 * The field fills its cell exactly; a longer text scrolls inside it. All is measured
		 * before anything is moved, so that the page is laid out once.
		 *
		 * @param isOnlySelected the field is not seen yet: it finds its place when it opens
		 */
		override refreshDimensions(isOnlySelected = false): void {
			if (!isOnlySelected && this.state !== EDITING) return;
			const td = this.getEditedCell() as HTMLTableCellElement | undefined;
			if (td) this.TD = td;
			if (!isOnlySelected && !td) this.close();
			if (isOnlySelected || !td) return;
			const grid = this.#host();
			const cellAt = td.getBoundingClientRect();
			const gridAt = grid.getBoundingClientRect();
			const [width, height] = [td.clientWidth - SIDES_PX, td.clientHeight - ENDS_PX];
			const [left, top] = [gridAt.left + grid.clientLeft, gridAt.top + grid.clientTop];
			this.textareaParentStyle.top = `${cellAt.top - top}px`;
			this.textareaParentStyle.left = `${cellAt.left - left}px`;
			this.showEditableElement();
			const { style } = this.TEXTAREA;
			style.width = style.minWidth = style.maxWidth = `${width}px`;
			style.height = style.minHeight = style.maxHeight = `${height}px`;
		}

		/** The grid takes the focus back at once; the library would drop it first. */
		override close(): void {
			if (document.activeElement === this.TEXTAREA) this.#host().focus({ preventScroll: true });
			super.close();
		}

		#host(): HTMLElement {
			return (this.instance as unknown as { rootElement: HTMLElement }).rootElement;
		}
	};
}
