import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { paperTable } from "../../print/paperTable.ts";
import type { HeldUnit } from "./heldUnit.ts";
import { unitCells, unitColumnsShown, worstFirstWords } from "./unitCells.ts";
import { unitPicture } from "./unitPicture.ts";

/** So many rows stand in the page at a time, however many the units. */
export const ROWS_SHOWN = 50;

interface Acts {
	look(unit: HeldUnit, from: HTMLElement): void;
	takeOut(unit: HeldUnit): void;
}

/** The units as a table, the worst first, some of them at a time, with a search. */
export class UnitsPart {
	readonly element = el("section", { class: "units-part" });
	readonly #acts: Acts;
	readonly #table = el("div", {
		class: "combined",
		tabindex: 0,
		role: "region",
		"aria-label": say`The units, worst first`,
	});
	readonly #search = el("input", { type: "search", autocomplete: "off" });
	readonly #shown = el("span", { role: "status" });
	readonly #before = this.#turn(say`Page before`, -1);
	readonly #after = this.#turn(say`Next page`, 1);
	#units: readonly HeldUnit[] = [];
	#usual: string | undefined;
	#at = 0;

	constructor(acts: Acts) {
		this.#acts = acts;
		this.#search.addEventListener("input", () => {
			this.#at = 0;
			this.#draw();
		});
		fill(
			this.element,
			el("h2", {}, say`The units`),
			el("p", { class: "saying" }, worstFirstWords),
			el(
				"div",
				{ class: "tools units-tools" },
				el("label", { class: "labelled" }, say`Search units`, this.#search),
				this.#before,
				this.#after,
				this.#shown,
			),
			this.#table,
		);
	}

	/** @param usual the day on which most plans begin */
	paint(units: readonly HeldUnit[], usual: string | undefined): void {
		this.#units = units;
		this.#usual = usual;
		this.element.hidden = units.length === 0;
		this.#draw();
	}

	#turn(words: string, by: number): HTMLButtonElement {
		const button = el("button", { type: "button" }, words);
		button.addEventListener("click", () => {
			this.#at += by;
			this.#draw();
			if (button.disabled) this.#table.focus();
		});
		return button;
	}

	#draw(): void {
		const wanted = this.#search.value.trim().toLocaleLowerCase();
		const found =
			wanted === ""
				? this.#units
				: this.#units.filter(({ row }) =>
						`${row.unit} ${row.path} ${row.in_words}`.toLocaleLowerCase().includes(wanted),
					);
		const last = Math.max(0, Math.ceil(found.length / ROWS_SHOWN) - 1);
		this.#at = Math.min(Math.max(0, this.#at), last);
		const from = this.#at * ROWS_SHOWN;
		const shown = found.slice(from, from + ROWS_SHOWN);
		this.#before.disabled = this.#at === 0;
		this.#after.disabled = this.#at === last;
		this.#shown.textContent =
			found.length === 0
				? say`No unit has that in its name.`
				: say`${from + 1} to ${from + shown.length} of ${counted(found.length, "unit")}`;
		fill(this.#table, shown.length > 0 && this.#tableOf(shown));
	}

	#tableOf(shown: readonly HeldUnit[]): HTMLElement {
		const columns = [...unitColumnsShown, { label: say`More of it` }];
		const table = paperTable(say`The units, worst first`, columns, [
			{ rows: shown.map((unit) => [...unitCells(unit.row, this.#usual), this.#buttons(unit)]) },
		]);
		table.classList.add("units-table");
		return table;
	}

	#buttons(unit: HeldUnit): HTMLElement {
		const { unit: name } = unit.row;
		const button = (words: string, label: string) =>
			el("button", { type: "button", "aria-label": label }, words);
		const picture = button(say`Picture`, say`Picture of ${name}`);
		const look = button(say`Its plan`, say`Its plan: ${name}, read only`);
		const out = button(say`Take out`, say`Take out: ${name}`);
		picture.setAttribute("aria-expanded", "false");
		picture.addEventListener("click", () => {
			const row = picture.closest("tr");
			const isOpen = picture.getAttribute("aria-expanded") === "true";
			picture.setAttribute("aria-expanded", String(!isOpen));
			if (isOpen) row?.nextElementSibling?.remove();
			else row?.after(pictureRow(unit));
		});
		look.addEventListener("click", () => this.#acts.look(unit, look));
		out.addEventListener("click", () => {
			this.#acts.takeOut(unit);
			this.#table.focus();
		});
		const isWorkbook = unit.given.kind === "workbook" && unit.row.state !== "not_read";
		return el(
			"div",
			{ class: "unit-buttons" },
			...(unit.row.state === "not_read" ? [] : [picture]),
			...(isWorkbook ? [look] : []),
			out,
		);
	}
}

function pictureRow(unit: HeldUnit): HTMLElement {
	const cell = el("td", { colspan: unitColumnsShown.length + 1 }, unitPicture(unit));
	return el("tr", { class: "picture-row" }, cell);
}
