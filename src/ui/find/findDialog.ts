import type { Place } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { breath } from "../dom/breath.ts";
import { el, fill } from "../dom/el.ts";
import type { State } from "../state/store.ts";
import { foundWords, hitItem, leftOut } from "./hitItem.ts";
import { search } from "./search.ts";

/** Between the last letter and the search: who types is not held up. */
const PAUSE_MS = 150;

/** The window in which a person looks for words in the whole workbook and goes to where they stand. */
export class FindDialog {
	readonly #state: () => State;
	readonly #goTo: (place: Place) => void;
	readonly #field = el("input", { type: "text", id: "find-field", autocomplete: "off" });
	readonly #status = el("p", { role: "status" });
	readonly #hits = el("ul", {});
	readonly #rest = el("div", {});
	readonly #dialog: HTMLDialogElement;
	/** Counts what was asked, so that the answer to an older question is not shown. */
	#asked = 0;
	#waiting: ReturnType<typeof setTimeout> | undefined;

	constructor(state: () => State, goTo: (place: Place) => void) {
		this.#state = state;
		this.#goTo = goTo;
		this.#dialog = el(
			"dialog",
			{ class: "find", "aria-label": say`Find in the workbook` },
			el("label", { for: "find-field" }, say`Find in all sheets, settings and problems`),
			el(
				"div",
				{ class: "find-line" },
				this.#field,
				el("button", { type: "button", onclick: () => this.#dialog.close() }, say`Close`),
			),
			this.#status,
			el("div", { class: "hits" }, this.#hits, this.#rest),
		);
		document.body.append(this.#dialog);
		this.#field.addEventListener("input", () => {
			clearTimeout(this.#waiting);
			this.#waiting = setTimeout(() => this.#search(false), PAUSE_MS);
		});
		this.#dialog.addEventListener("keydown", (event) => this.#step(event));
		this.#dialog.addEventListener("close", () => this.#forget());
	}

	/** Opens it with the words of last time, which typing replaces. */
	open(): void {
		this.#dialog.showModal();
		this.#field.select();
		this.#search(false);
	}

	async #search(everySheet: boolean): Promise<void> {
		this.#forget();
		const asked = this.#asked;
		const stopped = () => asked !== this.#asked;
		const words = this.#field.value;
		fill(this.#hits);
		fill(this.#rest);
		this.#status.textContent = "";
		if (words.trim() === "") return;
		const options = { everySheet, pause: breath(), stopped };
		for await (const found of search(this.#state(), words, options)) {
			if (stopped()) return;
			// Those found later stand after those found first, so a hit keeps its place and the focus.
			const later = found.hits.slice(this.#hits.children.length);
			this.#hits.append(...later.map((hit) => hitItem(hit, (place) => this.#jump(place))));
			this.#status.textContent = foundWords(found);
			if (found.done) fill(this.#rest, ...leftOut(found, () => this.#search(true)));
		}
	}

	#forget(): void {
		clearTimeout(this.#waiting);
		this.#waiting = undefined;
		this.#asked += 1;
	}

	/** Arrows walk from the field along the hits and back; Enter in the field takes the first hit. */
	#step(event: KeyboardEvent): void {
		const hits = [...this.#hits.querySelectorAll("button")];
		const stops = [this.#field, ...hits];
		const at = stops.indexOf(document.activeElement as HTMLInputElement);
		const way = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
		if (at < 0) return;
		if (way !== 0) stops[at + way]?.focus();
		else if (event.key !== "Enter" || at > 0) return;
		else if (this.#waiting !== undefined) this.#search(false);
		else hits[0]?.click();
		event.preventDefault();
	}

	#jump(place: Place): void {
		this.#dialog.close();
		document.getElementById("sheet")?.focus();
		this.#goTo(place);
	}
}
