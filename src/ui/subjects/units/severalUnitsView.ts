import { say } from "../../../core/say.ts";
import { districtNamesSheet } from "../../../core/sheets/districtNames.ts";
import { districtStockSheet } from "../../../core/sheets/districtStock.ts";
import { unitsOrderSheet } from "../../../core/sheets/unitsOrder.ts";
import { itemNames } from "../../../core/units/itemNames.ts";
import { storeStock } from "../../../core/units/storeStock.ts";
import { computedCsv } from "../../../io/computedCsv.ts";
import { breath } from "../../dom/breath.ts";
import { el, fill } from "../../dom/el.ts";
import { catchDrops } from "../../files/catchDrops.ts";
import { type GivenFile, pickedFiles } from "../../files/givenFile.ts";
import { pickFiles, pickFolder } from "../../files/pickFiles.ts";
import { saveFile } from "../../files/saveFile.ts";
import { counted } from "../../format/counted.ts";
import type { PrintOut, View } from "../../page.ts";
import { printOut } from "../../print/printOut.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { clockNow } from "../../state/clockNow.ts";
import type { Store } from "../../state/store.ts";
import { District } from "./district.ts";
import { DistrictField } from "./districtField.ts";
import { districtLines, orderHeadline } from "./districtLines.ts";
import { type DistrictState, districtLists } from "./districtLists.ts";
import { districtNotes, usualDay } from "./districtNotes.ts";
import { givenUnits } from "./givenUnits.ts";
import type { HeldUnit } from "./heldUnit.ts";
import { orderPaper } from "./orderPaper.ts";
import { orderPart } from "./orderPart.ts";
import { progressBar } from "./progressBar.ts";
import { readDistrict } from "./readDistrict.ts";
import { readDistrictText } from "./readDistrictText.ts";
import { severalUnitsTitle } from "./severalUnitsTitle.ts";
import { unitPlanView } from "./unitPlanView.ts";
import { unitsPaper } from "./unitsPaper.ts";
import { UnitsPart } from "./unitsPart.ts";

/** What must be there for a button to be of use. */
type Needs = "nothing" | "units" | "waiting" | "order";

const FILES = ".zip,.xlsx,.xlsm,.ods,.csv,.txt,.tsv";

/** What was read stays while the person looks at other sheets. */
let district = new District();

export class SeveralUnitsView implements View {
	readonly file = severalUnitsTitle.file;
	readonly #store: Store;
	readonly #release: () => void;
	readonly #title = el("h1", {});
	readonly #page = el("div", {});
	readonly #place: HTMLElement;
	readonly #notes = el("ul", { class: "district-notes" });
	readonly #order = el("div", {});
	readonly #bar = progressBar(() => this.#stopping.abort());
	readonly #names = new DistrictField(
		districtNamesSheet,
		say`Gauze 10 x 10, Gauze swab`,
		() => void this.#sum(),
	);
	readonly #stock = new DistrictField(
		districtStockSheet,
		say`Gauze swab, 200, piece`,
		() => void this.#sum(),
	);
	readonly #units = new UnitsPart({
		look: (unit, from) => void this.#look(unit, from),
		takeOut: (unit) => {
			district.takeOut(unit);
			void this.#sum();
		},
	});
	readonly #buttons: readonly { readonly element: HTMLButtonElement; readonly needs: Needs }[];
	#stopping = new AbortController();
	#state: DistrictState | undefined;
	#run = 0;

	constructor(place: HTMLElement, store: Store) {
		this.#place = place;
		this.#store = store;
		const button = (needs: Needs, words: string, act: () => void) => ({
			needs,
			element: el("button", { type: "button", onclick: act }, words),
		});
		this.#buttons = [
			button("nothing", say`Choose files`, () =>
				pickFiles(FILES, (files) => void this.#take(pickedFiles(files))),
			),
			button("nothing", say`Choose a folder`, () =>
				pickFolder((files) => void this.#take(pickedFiles(files))),
			),
			button("waiting", say`Read on`, () => void this.#read()),
			button("order", say`Save the order (CSV)`, () => {
				if (this.#state)
					saveFile(unitsOrderSheet.file, computedCsv(this.#state.sums.table), "text/csv");
			}),
			button("order", say`Save all lists (zip)`, () => {
				if (this.#state) saveFile("district.zip", districtLists(this.#state), "application/zip");
			}),
			button("order", say`Print the order`, () =>
				this.#print((state, notes) => orderPaper(state, notes, false)),
			),
			button("order", say`Print with each unit's share`, () =>
				this.#print((state, notes) => orderPaper(state, notes, true)),
			),
			button("units", say`Print the units`, () =>
				this.#print((state, notes) => unitsPaper(state, notes, usualDay(district))),
			),
			button("units", say`Start again`, () => {
				district = new District();
				void this.#sum();
			}),
		];
		this.#buttons[0]?.element.classList.add("main");
		fill(
			this.#page,
			pageHead(this.#title, severalUnitsTitle.about),
			el("div", { class: "tools" }, ...this.#buttons.map(({ element }) => element)),
			el(
				"p",
				{ class: "drop-here" },
				say`Or drop workbooks, folders or orders anywhere on this page.`,
			),
			this.#bar.element,
			this.#notes,
			this.#units.element,
			this.#order,
			this.#names.element,
			this.#stock.element,
		);
		fill(place, this.#page);
		this.#release = catchDrops((files) => void files.then((given) => this.#take(given)));
		void this.#sum();
	}

	paint(): void {}

	show(): void {}

	destroy(): void {
		this.#stopping.abort();
		this.#release();
	}

	async #take(given: readonly GivenFile[]): Promise<void> {
		if (this.#bar.isWorking()) return;
		const { units, names, stock } = givenUnits(given);
		if (names) await this.#names.load(names);
		if (stock) await this.#stock.load(stock);
		district.receive(units);
		if (units.length > 0) await this.#read();
	}

	async #read(): Promise<void> {
		if (this.#bar.isWorking()) return;
		this.#stopping = new AbortController();
		for (const { element } of this.#buttons) element.disabled = true;
		const all = district.waiting.length;
		this.#bar.show(0, all, say`0 of ${counted(all, "unit")} read and planned`);
		await readDistrict(district, clockNow().date, this.#bar, this.#stopping.signal);
		await this.#sum();
		this.#bar.done(
			say`${counted(all - district.waiting.length, "unit")} read; ${counted(district.units.length, "unit")} in the list.`,
		);
		this.#enable();
	}

	/** Adds everything up anew and draws it. What was begun before it is let go. */
	async #sum(): Promise<void> {
		const run = ++this.#run;
		const names = readDistrictText(districtNamesSheet, this.#names.text);
		const stock = readDistrictText(districtStockSheet, this.#stock.text);
		this.#names.say(names.problems);
		this.#stock.say(stock.problems);
		const nameOf = itemNames(names.rows.rows.map(({ value }) => value));
		const pause = breath();
		const sums = district.sums(nameOf, storeStock(stock.rows, nameOf));
		let next = sums.next();
		for (; !next.done; next = sums.next()) await pause();
		if (run !== this.#run) return;
		const isWhole = names.isRead && stock.isRead;
		this.#state = isWhole
			? {
					district,
					sums: next.value,
					nameOf,
					names: this.#names.text,
					stock: this.#stock.text,
					problems: [...district.problems, ...next.value.problems],
				}
			: undefined;
		this.#draw(next.value.table.rows.length > 0);
	}

	#draw(hasOrder: boolean): void {
		const state = this.#state;
		const { units } = district;
		const lines = state && hasOrder ? districtLines(state.sums.table) : [];
		this.#title.textContent =
			units.length === 0 ? severalUnitsTitle.title : orderHeadline(district.counted, lines);
		const notes = state
			? districtNotes(district, state.sums)
			: [
					say`There is no order while a line of the two tables below is not understood: the sums would be others.`,
				];
		fill(this.#notes, ...notes.map((words) => el("li", {}, words)));
		this.#notes.hidden = notes.length === 0;
		this.#units.paint(units, usualDay(district));
		fill(this.#order, state && hasOrder && orderPart(lines, district, state.nameOf));
		this.#enable();
	}

	#enable(): void {
		const has = {
			nothing: true,
			units: district.units.length > 0,
			waiting: district.waiting.length > 0,
			order: this.#state !== undefined && this.#state.sums.table.rows.length > 0,
		};
		for (const { element, needs } of this.#buttons) {
			element.disabled = this.#bar.isWorking() || !has[needs];
			if (needs === "waiting") element.hidden = !has.waiting;
		}
	}

	get onPaper(): PrintOut | undefined {
		const state = this.#state;
		if (!state || state.sums.table.rows.length === 0) return undefined;
		return orderPaper(state, districtNotes(district, state.sums), false);
	}

	#print(paper: (state: DistrictState, notes: readonly string[]) => PrintOut): void {
		const state = this.#state;
		if (!state) return;
		printOut(paper(state, districtNotes(district, state.sums)), this.#store.state);
	}

	/** The unit's own plan in place of the list, until somebody goes back. */
	async #look(unit: HeldUnit, from: HTMLElement): Promise<void> {
		const back = el("button", { type: "button", class: "main" }, say`Back to the units`);
		back.addEventListener("click", () => {
			fill(this.#place, this.#page);
			from.focus();
		});
		const view = await unitPlanView(unit, clockNow().date, back);
		if (!this.#page.isConnected) return;
		fill(this.#place, view);
		view.querySelector("h1")?.focus();
	}
}
