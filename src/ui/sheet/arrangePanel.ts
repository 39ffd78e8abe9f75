import { say } from "../../core/say.ts";
import { el, fill } from "../dom/el.ts";
import { type Arrangement, asInFile, isAsInFile } from "../grid/arrangement.ts";
import type { GridColumn } from "../grid/gridModel.ts";

/** Between the last letter and the rows that contain it: who types is not held up. */
const PAUSE_MS = 250;

/** The fields with which a person sorts and chooses rows, and the button that opens them. */
export class ArrangePanel {
	readonly button = el(
		"button",
		{ type: "button", "aria-expanded": "false", "aria-controls": "arrange" },
		say`Sort and filter`,
	);
	readonly element: HTMLElement;
	readonly #by = el("select", { id: "arrange-by" });
	readonly #way = el(
		"select",
		{ id: "arrange-way" },
		el("option", { value: "up" }, say`ascending`),
		el("option", { value: "down" }, say`descending`),
	);
	readonly #among = el("select", { id: "arrange-among" });
	readonly #contains = el("input", {
		id: "arrange-contains",
		type: "search",
		autocomplete: "off",
	});
	readonly #all: HTMLButtonElement;
	readonly #changed: (arrangement: Arrangement) => void;
	#keys = "";
	#waiting: ReturnType<typeof setTimeout> | undefined;

	constructor(changed: (arrangement: Arrangement) => void) {
		this.#changed = changed;
		this.#all = el(
			"button",
			{ type: "button", onclick: () => changed(asInFile) },
			say`All rows, as in the file`,
		);
		this.element = el(
			"div",
			{ class: "tools arrange", id: "arrange", hidden: true },
			labelled(say`Sort by`, this.#by),
			labelled(say`Direction`, this.#way),
			labelled(say`Rows where`, this.#among),
			labelled(say`contains`, this.#contains),
			this.#all,
		);
		this.button.addEventListener("click", () => {
			this.element.hidden = !this.element.hidden;
			this.button.setAttribute("aria-expanded", String(!this.element.hidden));
		});
		for (const field of [this.#by, this.#way, this.#among, this.#contains])
			field.addEventListener("change", () => this.#arrange());
		this.#contains.addEventListener("input", () => {
			clearTimeout(this.#waiting);
			this.#waiting = setTimeout(() => this.#arrange(), PAUSE_MS);
		});
	}

	/** Shows an arrangement of a sheet with these columns; none where there are no rows to arrange. */
	paint(columns: readonly GridColumn[], arrangement: Arrangement): void {
		const keys = columns.map(({ key }) => key).join();
		this.button.hidden = columns.length === 0;
		if (columns.length === 0) this.element.hidden = true;
		if (keys !== this.#keys) {
			const options = () => columns.map(({ key, label }) => el("option", { value: key }, label));
			fill(this.#by, el("option", { value: "" }, say`the file's own order`), ...options());
			fill(this.#among, el("option", { value: "" }, say`any column`), ...options());
		}
		this.#keys = keys;
		this.#by.value = arrangement.by;
		this.#way.value = arrangement.descending ? "down" : "up";
		this.#way.disabled = arrangement.by === "";
		this.#among.value = arrangement.among;
		if (this.#contains.value !== arrangement.contains) this.#contains.value = arrangement.contains;
		this.#all.disabled = isAsInFile(arrangement);
	}

	#arrange(): void {
		clearTimeout(this.#waiting);
		if (!this.element.isConnected) return;
		this.#changed({
			by: this.#by.value,
			descending: this.#way.value === "down",
			among: this.#among.value,
			contains: this.#contains.value,
		});
	}
}

function labelled(words: string, field: HTMLElement): HTMLElement {
	return el("span", { class: "labelled" }, el("label", { for: field.id }, words), field);
}
