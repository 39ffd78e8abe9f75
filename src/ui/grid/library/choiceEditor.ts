import { el, fill } from "../../dom/el.ts";
import { choiceTyped, shownChoice } from "../../format/shownChoice.ts";
import type { TextEditor } from "./textEditor.ts";

/** The text field of a cell with the closed list of the column beneath it: type, or take one with arrows or a click. */
export function choiceEditor(Base: TextEditor): TextEditor {
	return class ChoiceEditor extends Base {
		declare list: HTMLElement;

		override createElements(): void {
			super.createElements();
			this.list = el("div", { class: "choices" });
			this.TEXTAREA_PARENT.append(this.list);
		}

		override open(): void {
			super.open();
			const options = this.#options();
			fill(
				this.list,
				...options.map((option) =>
					el(
						"div",
						{ class: "choice", onmousedown: (event) => this.#take(event, option) },
						shownChoice(option, options),
					),
				),
			);
			this.TEXTAREA.onkeydown = (event: KeyboardEvent) => this.#step(event, options);
		}

		override close(): void {
			super.close();
			fill(this.list);
			this.TEXTAREA.onkeydown = null;
		}

		/** The field holds the word that is read; the cell gets the one that files keep. */
		override setValue(text: string): void {
			super.setValue(shownChoice(text, this.#options()));
		}

		override getValue(): string {
			return choiceTyped(super.getValue(), this.#options());
		}

		#options(): readonly string[] {
			return (this.cellProperties as { options?: readonly string[] }).options ?? [];
		}

		#take(event: Event, option: string): void {
			event.preventDefault();
			this.setValue(option);
			this.finishEditing(false, false);
		}

		#step(event: KeyboardEvent, options: readonly string[]): void {
			const way = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
			if (way === 0) return;
			const at = options.indexOf(this.getValue());
			this.setValue(options[(at + way + options.length) % options.length] ?? "");
			event.preventDefault();
			event.stopPropagation();
		}
	};
}
