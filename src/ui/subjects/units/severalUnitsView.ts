import { say } from "../../../core/say.ts";
import { districtNamesSheet } from "../../../core/sheets/districtNames.ts";
import { districtStockSheet } from "../../../core/sheets/districtStock.ts";
import { unitsOrderSheet } from "../../../core/sheets/unitsOrder.ts";
import { computedCsv } from "../../../io/computedCsv.ts";
import { acceptedEndings } from "../../../io/fileEndings.ts";
import { el, fill } from "../../dom/el.ts";
import { renew } from "../../dom/renew.ts";
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
import { askCustoms } from "./askCustoms.ts";
import { comeWords } from "./comeWords.ts";
import { districtButtons } from "./districtButtons.ts";
import { DistrictField } from "./districtField.ts";
import { orderHeadline } from "./districtLines.ts";
import { districtLists } from "./districtLists.ts";
import { districtNotes, usualDay } from "./districtNotes.ts";
import { type Come, DistrictReading } from "./districtReading.ts";
import { type DistrictState, districtState, linesOf } from "./districtState.ts";
import { givenUnits } from "./givenUnits.ts";
import type { HeldUnit } from "./heldUnit.ts";
import { orderPaper } from "./orderPaper.ts";
import { orderPart } from "./orderPart.ts";
import { progressBar } from "./progressBar.ts";
import { readDistrictText } from "./readDistrictText.ts";
import { severalUnitsTitle } from "./severalUnitsTitle.ts";
import { unitPlanView } from "./unitPlanView.ts";
import { unitsPaper } from "./unitsPaper.ts";
import { UnitsPart } from "./unitsPart.ts";

const FILES = acceptedEndings("zip", "spreadsheet", "text");

/** What was read stays while the person looks at other pages, and what is being read goes on. */
const reading = new DistrictReading(askCustoms);

export class SeveralUnitsView implements View {
	readonly file = severalUnitsTitle.file;
	readonly #store: Store;
	readonly #release: () => void;
	readonly #unwatch: () => void;
	readonly #title = el("h1", {});
	readonly #page = el("div", {});
	readonly #place: HTMLElement;
	readonly #notes = el("ul", { class: "district-notes" });
	readonly #order = el("div", {});
	readonly #bar = progressBar(() => reading.stop());
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
			reading.district.takeOut(unit);
			void this.#sum();
		},
	});
	readonly #buttons = districtButtons({
		files: () => pickFiles(FILES, (files) => void this.#take(pickedFiles(files))),
		folder: () => pickFolder((files) => void this.#take(pickedFiles(files))),
		readOn: () => void this.#read(),
		showRead: () => this.#paintUnits(),
		save: () => {
			if (this.#state)
				saveFile(unitsOrderSheet.file, computedCsv(this.#state.sums.table), "text/csv");
		},
		saveAll: () => {
			if (this.#state) saveFile("district.zip", districtLists(this.#state), "application/zip");
		},
		printOrder: () => this.#print((state, notes) => orderPaper(state, notes, false)),
		printShares: () => this.#print((state, notes) => orderPaper(state, notes, true)),
		printUnits: () =>
			this.#print((state, notes) => unitsPaper(state, notes, usualDay(state.district))),
		startAgain: () => {
			reading.startAgain();
			void this.#sum();
		},
	});
	#state: DistrictState | undefined;
	#run = 0;

	constructor(place: HTMLElement, store: Store) {
		this.#place = place;
		this.#store = store;
		fill(
			this.#page,
			pageHead(this.#title, severalUnitsTitle.about),
			this.#buttons.element,
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
		this.#unwatch = reading.watch({
			went: (come) => this.#went(come),
			ended: (come) => void this.#ended(come),
		});
		if (reading.isGoing) this.#went(reading.come);
		void this.#sum();
	}

	paint(): void {}

	show(): void {}

	destroy(): void {
		this.#unwatch();
		this.#release();
	}

	async #take(given: readonly GivenFile[]): Promise<void> {
		const { units, names, stock } = givenUnits(given);
		if (names) await this.#names.load(names);
		if (stock) await this.#stock.load(stock);
		reading.district.receive(units);
		if (units.length > 0) await this.#read();
	}

	async #read(): Promise<void> {
		if (reading.isGoing) return;
		const going = reading.read(clockNow().date);
		await this.#sum();
		await going;
	}

	#went(come: Come): void {
		this.#bar.show(come.read, come.all, comeWords(come));
	}

	async #ended({ read }: Come): Promise<void> {
		await this.#sum();
		const { units } = reading.district;
		this.#bar.done(
			say`${counted(read, "unit")} read; ${counted(units.length, "unit")} in the list.`,
		);
	}

	/** Adds everything up anew and draws it. What was begun before it is let go. */
	async #sum(): Promise<void> {
		const run = ++this.#run;
		const [names, stock] = [this.#names.text, this.#stock.text];
		this.#names.say(readDistrictText(districtNamesSheet, names).problems);
		this.#stock.say(readDistrictText(districtStockSheet, stock).problems);
		// Sums that lack what is still read would pass for the district's.
		if (reading.isGoing) return this.#draw(undefined);
		const state = await districtState(reading.district, names, stock);
		if (run === this.#run) this.#draw(state);
	}

	#draw(state: DistrictState | undefined): void {
		this.#state = state;
		const lines = state ? linesOf(state) : [];
		const { district } = reading;
		const { units } = district;
		renew(
			this.#title,
			units.length === 0 || reading.isGoing
				? severalUnitsTitle.title
				: orderHeadline(district.counted, lines),
		);
		const notes = this.#notesOf(state);
		fill(this.#notes, ...notes.map((words) => el("li", {}, words)));
		this.#notes.hidden = notes.length === 0;
		this.#paintUnits();
		fill(this.#order, state && lines.length > 0 && orderPart(lines, district, state.nameOf));
		this.#buttons.enable({
			nothing: true,
			reading: reading.isGoing,
			units: !reading.isGoing && units.length > 0,
			waiting: !reading.isGoing && district.waiting > 0,
			order: lines.length > 0,
		});
	}

	#notesOf(state: DistrictState | undefined): readonly string[] {
		if (reading.isGoing)
			return [
				say`Units are being read; it goes on while you look at other pages. The order comes when all are read.`,
			];
		if (state) return districtNotes(state.district, state.sums);
		return [
			say`There is no order while a line of the two tables below is not understood: the sums would be others.`,
		];
	}

	#paintUnits(): void {
		this.#units.paint(reading.district.units, usualDay(reading.district));
	}

	get onPaper(): PrintOut | undefined {
		const state = this.#state;
		if (!state || state.sums.table.rows.length === 0) return undefined;
		return orderPaper(state, districtNotes(state.district, state.sums), false);
	}

	#print(paper: (state: DistrictState, notes: readonly string[]) => PrintOut): void {
		const state = this.#state;
		if (!state) return;
		printOut(paper(state, districtNotes(state.district, state.sums)), this.#store.state);
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
