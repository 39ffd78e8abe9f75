import type { Place } from "../../core/problem.ts";
import { sheetOf } from "../../core/sheets/sheetOf.ts";
import { el, fill } from "../dom/el.ts";
import type { SheetPart, Surroundings, View } from "../page.ts";
import { THIS_WEEK } from "../shell/pageTitles.ts";
import type { State } from "../state/store.ts";
import { weekWords } from "../subjects/week/weekWords.ts";
import { Desk } from "./desk.ts";
import { headline } from "./headline.ts";
import { overGrid } from "./overGrid.ts";
import { sheetCautions, sheetNotes } from "./sheetNotes.ts";
import { sheetParts } from "./sheetParts.ts";
import { SheetTools } from "./sheetTools.ts";

/** One sheet on the screen. It is mounted once and painted again at every change. */
export class SheetView implements View {
	readonly file: string;
	readonly #around: Surroundings;
	readonly #title = el("h1", {});
	readonly #about = el("div", { class: "about" });
	readonly #over = el("div", { class: "over" });
	readonly #under = el("div", { class: "under" });
	readonly #part: SheetPart | undefined;
	readonly #desk: Desk;
	readonly #tools: SheetTools;

	constructor(file: string, place: HTMLElement, around: Surroundings) {
		this.file = file;
		this.#around = around;
		this.#part = sheetParts[file]?.(around);
		this.#desk = new Desk(file, around);
		this.#tools = new SheetTools(file, this.#desk, around.store);
		fill(
			place,
			el("header", { class: "sheet-head" }, this.#title, this.#about),
			this.#over,
			this.#part?.element,
			this.#tools.element,
			this.#desk.element,
			this.#desk.table,
			this.#under,
		);
		this.paint(around.store.state);
	}

	paint(state: State): void {
		const isWeek = this.file === THIS_WEEK;
		this.#title.textContent = headline(state, this.file);
		const about = isWeek ? weekWords(state) : (sheetOf(this.file)?.about ?? "");
		fill(this.#about, el("p", {}, about));
		fill(this.#over, this.#picture(state), !isWeek && sheetCautions(this.file));
		this.#part?.paint(state);
		this.#desk.paint(state);
		this.#tools.paint();
		fill(this.#under, ...sheetNotes(state, this.file, this.#around.goTo));
	}

	show(place: Place): void {
		this.#desk.show(place);
		this.#tools.paint();
	}

	destroy(): void {
		this.#desk.destroy();
	}

	#picture(state: State): HTMLElement | undefined {
		return overGrid[this.file]?.(state, this.#over.clientWidth || window.innerWidth - 32);
	}
}
