import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import type { Place } from "../../../core/problem.ts";
import { say } from "../../../core/say.ts";
import { checksSheet } from "../../../core/sheets/checks.ts";
import { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { named } from "../../dom/named.ts";
import { renew } from "../../dom/renew.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import type { OwnPage, PrintOut, Surroundings, View } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printOut } from "../../print/printOut.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { daysOf } from "../../state/daysOf.ts";
import { wordIn } from "../../state/numberIn.ts";
import { sentenceIn } from "../../state/sentenceIn.ts";
import type { State } from "../../state/store.ts";
import { checkSheet } from "./checkSheet.ts";
import { historyTable } from "./historyTable.ts";
import { kitChecks } from "./kitChecks.ts";
import { kitHistoryTitle } from "./kitHistoryTitle.ts";
import { readinessCautions } from "./readinessCautions.ts";
import { stateMark } from "./stateMark.ts";
import { stateWord } from "./stateWord.ts";

/** One kit: how it stands, and every check it went through. */
export const kitHistoryPage: OwnPage = {
	mount: (place, around) => new KitHistoryView(place, around),
};

class KitHistoryView implements View {
	readonly file = kitHistoryTitle.file;
	readonly #around: Surroundings;
	readonly #title = el("h1", {});
	readonly #kits = el("select", { id: "history-kit" });
	readonly #body = el("div", { class: "kit-history" });

	constructor(place: HTMLElement, around: Surroundings) {
		this.#around = around;
		this.#kits.addEventListener("change", () => this.paint(around.store.state));
		const button = (words: string, act: () => void) =>
			el("button", { type: "button", onclick: act }, words);
		fill(
			place,
			pageHead(this.#title, kitHistoryTitle.about),
			el(
				"div",
				{ class: "tools day-chooser" },
				named(say`Kit`, this.#kits),
				button(say`Add a check`, () => this.#addCheck()),
				button(say`Print this history`, () =>
					this.#print((row) => [this.#historyPaper(row)], false),
				),
				button(say`Print a check sheet for this kit`, () => this.#print(checkPapers, false)),
				button(say`Print check sheets for all kits`, () => this.#print(checkPapers, true)),
			),
			this.#body,
			cautionList(readinessCautions),
		);
		this.paint(around.store.state);
	}

	paint(state: State): void {
		const names = rowsOf(state.plan, kitRegisterSheet).map((row) => wordIn(row.kit));
		const kept = names.includes(this.#kits.value) ? this.#kits.value : (names[0] ?? "");
		fill(this.#kits, ...names.map((name) => el("option", { value: name }, name)));
		this.#kits.value = kept;
		const row = this.#row();
		renew(this.#title, row ? titleWords(row) : kitHistoryTitle.title);
		fill(
			this.#body,
			...(row
				? this.#parts(row)
				: [el("p", { class: "nothing" }, say`No kit is in the list of kits yet.`)]),
		);
	}

	show(): void {}

	destroy(): void {}

	get onPaper(): PrintOut | undefined {
		const row = this.#row();
		return row && { name: say`Checks`, pages: () => [this.#historyPaper(row)] };
	}

	#row(): ComputedRow<typeof kitRegisterSheet> | undefined {
		const { state } = this.#around.store;
		return rowsOf(state.plan, kitRegisterSheet).find((row) => wordIn(row.kit) === this.#kits.value);
	}

	#parts(row: ComputedRow<typeof kitRegisterSheet>): Child[] {
		const { store, goTo } = this.#around;
		const place = (line: number): Place => ({ file: checksSheet.file, line, column: "checked_at" });
		const checks = checksOf(store.state, row);
		return [
			el("p", { class: "in-words" }, stateMark(wordIn(row.state)), standsWords(row)),
			checks.length === 0
				? el("p", {}, say`No check of this kit is on record.`)
				: historyTable(checks, (line) => goTo(place(line))),
		];
	}

	#addCheck(): void {
		const { store, goTo } = this.#around;
		const rows = store.state.workbook.tables[checksSheet.file]?.rows.length ?? 0;
		goTo({ file: checksSheet.file, line: rows + 2, column: "checked_at" });
	}

	#historyPaper(row: ComputedRow<typeof kitRegisterSheet>): HTMLElement {
		const { state } = this.#around.store;
		const when = daysOf(state)[0];
		return paperForm(
			state,
			"history-paper",
			{
				title: titleWords(row),
				when: when === undefined ? "" : shownDayAndYear(when),
				cautions: readinessCautions,
			},
			el("p", {}, stateMark(wordIn(row.state)), standsWords(row)),
			historyTable(checksOf(state, row)),
		);
	}

	#print(
		pagesOf: (row: ComputedRow<typeof kitRegisterSheet>, state: State) => HTMLElement[],
		all: boolean,
	): void {
		const { store, tell } = this.#around;
		const rows = rowsOf(store.state.plan, kitRegisterSheet).filter(
			(row) => all || row === this.#row(),
		);
		if (rows.length === 0) {
			tell([say`No kit is in the list of kits yet.`]);
			return;
		}
		const pages = () => rows.flatMap((row) => pagesOf(row, store.state));
		printOut({ name: say`Checks`, pages }, store.state);
	}
}

function checkPapers(row: ComputedRow<typeof kitRegisterSheet>, state: State): HTMLElement[] {
	return [checkSheet(state, wordIn(row.kit), wordIn(row.kind))];
}

function checksOf(state: State, row: ComputedRow<typeof kitRegisterSheet>) {
	return kitChecks(state, wordIn(row.kit), wordIn(row.kind), daysOf(state).at(-1));
}

function titleWords(row: ComputedRow<typeof kitRegisterSheet>): string {
	const until = wordIn(row.ready_until);
	const state = wordIn(row.state);
	const kit = wordIn(row.kit);
	return state === "ready" && until !== ""
		? say`Kit ${kit}: ready until ${shownDayAndYear(until)}`
		: say`Kit ${kit}: ${stateWord(state)}`;
}

function standsWords(row: ComputedRow<typeof kitRegisterSheet>): string {
	const since = wordIn(row.ready_since);
	const words = [
		wordIn(row.kind),
		since === "" ? "" : say`disinfected on ${shownDayAndYear(since)}`,
		sentenceIn(row.reason).replace(/\.$/, ""),
		wordIn(row.counts) === "yes" ? say`the plan counts on it` : say`the plan does not count on it`,
	];
	return say`: ${words.filter(Boolean).join(semicolon)}.`;
}
