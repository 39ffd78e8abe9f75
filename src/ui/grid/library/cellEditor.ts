import { say } from "../../../core/say.ts";
import type { TextEditor } from "./textEditor.ts";

/** Padding of the field, as the style sheet has it. */
const SIDES_PX = 16;
const ENDS_PX = 12;

/** The text field of a cell, with a name for screen readers from its first moment on. */
export function cellEditor(Base: TextEditor): TextEditor {
	return class CellEditor extends Base {
		declare originalValue: unknown;

		override createElements(): void {
			super.createElements();
			this.TEXTAREA.setAttribute("aria-label", say`Text of the cell`);
		}

		/** It opens with the text that is there now; the library's own is that of when the cell was selected. */
		override beginEditing(text?: string): void {
			this.originalValue = this.instance.getSourceDataAtCell(this.row, this.col);
			super.beginEditing(text);
		}

		/** The field fills its cell exactly; a longer text scrolls inside it. */
		override refreshDimensions(): void {
			super.refreshDimensions();
			if (!this.TD) return;
			const { style } = this.TEXTAREA;
			style.width = style.minWidth = style.maxWidth = `${this.TD.clientWidth - SIDES_PX}px`;
			style.height = style.minHeight = style.maxHeight = `${this.TD.clientHeight - ENDS_PX}px`;
		}
	};
}
