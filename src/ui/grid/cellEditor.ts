import type Handsontable from "handsontable";

type TextEditor = typeof Handsontable.editors.TextEditor;

/** The text field of a cell, with a name for screen readers from its first moment on. */
export function cellEditor(Base: TextEditor): TextEditor {
	return class CellEditor extends Base {
		override createElements(): void {
			super.createElements();
			this.TEXTAREA.setAttribute("aria-label", "Text of the cell");
		}
	};
}
