import { withUsageTaken } from "../../../core/edit/withUsageTaken.ts";
import { spanTable } from "../../../core/plan/record/monthTable.ts";
import {
	LEAST_ISSUES,
	LEAST_TIMES,
	type UsageLearned,
} from "../../../core/plan/record/usageLearned.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { computedCsv } from "../../../io/computedCsv.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { named } from "../../dom/named.ts";
import { renew } from "../../dom/renew.ts";
import { textScale } from "../../dom/textScale.ts";
import { saveFile } from "../../files/saveFile.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import type { OwnPage, PrintOut, Surroundings, View } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printOut } from "../../print/printOut.ts";
import { signatures } from "../../print/signatures.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import type { State } from "../../state/store.ts";
import { itemsNotRecorded, itemsTable, type TakeOver } from "./itemsTable.ts";
import { measuresTable } from "./measuresTable.ts";
import { monthPictures } from "./monthPictures.ts";
import { monthTitle } from "./monthTitle.ts";
import { monthWords } from "./monthWords.ts";
import { daysOfSpan, monthsOnRecord, type Span, shownSpan, spanOfMonth } from "./span.ts";
import { wideTable } from "./wideTable.ts";

/** From this width on two pictures stand beside each other, with this between them. */
const ROOM_FOR_TWO_PX = 900;
const GAP_PX = 32;
/** Drawn wider than half an A4 page, so that the letters on it are as small as the text beside them. */
const PAPER_PICTURE_PX = 440;

/** What was planned and what was done over a month, a week or any span. */
export const monthPage: OwnPage = {
	mount: (place, around) => new MonthView(place, around),
};

class MonthView implements View {
	readonly file = monthTitle.file;
	readonly #around: Surroundings;
	readonly #title = el("h1", {});
	readonly #month = el("select", { id: "report-month" });
	readonly #from = el("input", { id: "report-from", type: "date" });
	readonly #to = el("input", { id: "report-to", type: "date" });
	readonly #body = el("div", { class: "month-report" });

	constructor(place: HTMLElement, around: Surroundings) {
		this.#around = around;
		const repaint = () => this.paint(around.store.state);
		this.#month.addEventListener("change", () => {
			this.#take(spanOfMonth(this.#month.value));
			repaint();
		});
		for (const field of [this.#from, this.#to]) field.addEventListener("change", repaint);
		const button = (words: string, act: (state: State) => void) =>
			el("button", { type: "button", onclick: () => act(around.store.state) }, words);
		fill(
			place,
			pageHead(this.#title, monthTitle.about),
			el(
				"div",
				{ class: "tools day-chooser" },
				named(say`Month`, this.#month),
				named(say`First day`, this.#from),
				named(say`Last day`, this.#to),
				button(say`Print this page`, (state) => {
					if (this.onPaper) printOut(this.onPaper, state);
				}),
				button(say`Print the pictures`, (state) => this.#printPictures(state)),
				button(say`Save as month.csv`, (state) => this.#save(state)),
			),
			this.#body,
		);
		this.paint(around.store.state);
	}

	paint(state: State): void {
		const months = monthsOnRecord(state);
		if (this.#from.value === "" && this.#to.value === "" && months[0])
			this.#take(spanOfMonth(months[0]));
		const span = this.#span();
		fill(
			this.#month,
			...months.map((month) => el("option", { value: month }, shownSpan(spanOfMonth(month)))),
			el("option", { value: "" }, say`other days`),
		);
		this.#month.value =
			months.find((month) => {
				const whole = spanOfMonth(month);
				return whole.from === span.from && whole.to === span.to;
			}) ?? "";
		const days = daysOfSpan(span);
		renew(
			this.#title,
			days.length === 0 ? monthTitle.title : say`${shownSpan(span)}: planned and done`,
		);
		fill(
			this.#body,
			...(days.length === 0
				? [
						el(
							"p",
							{ class: "nothing" },
							say`Choose a first and a last day, at most two years apart.`,
						),
					]
				: [
						monthPictures(readWorkbook(state.workbook), days, this.#pictureRoom()),
						...parts(state, span, (learned) => this.#takeOver(learned, span)),
					]),
		);
	}

	show(): void {}

	destroy(): void {}

	#span(): Span {
		return { from: this.#from.value, to: this.#to.value };
	}

	#take({ from, to }: Span): void {
		this.#from.value = from;
		this.#to.value = to;
	}

	#takeOver({ row, each, used, times }: UsageLearned, span: Span): void {
		const { store, tell } = this.#around;
		const quantity = Number(each.toPrecision(3));
		const from = say`by the books, ${shownSpan(span)}: ${shownPlain(Number(used.toFixed(3)))} for ${shownPlain(times)}`;
		store.edit(withUsageTaken(store.state.workbook, row.line, quantity, from));
		tell([
			say`${row.value.item}: the plan takes ${shownPlain(quantity)} each time now; Undo takes it back.`,
		]);
	}

	get onPaper(): PrintOut | undefined {
		const span = this.#span();
		if (daysOfSpan(span).length === 0) return undefined;
		const pages = (state: State) => [
			paperForm(
				state,
				"month-report",
				{
					title: say`Planned and done`,
					when: shownSpan(span),
					end: signatures(say`Prepared by, date`, say`Seen by the supervisor, date`),
				},
				...parts(state, span),
			),
		];
		return { name: say`Planned and done`, pages };
	}

	/** Two pictures stand side by side where there is room for them. */
	#pictureRoom(): number {
		const room = this.#body.clientWidth / textScale();
		return room < ROOM_FOR_TWO_PX ? room : (room - GAP_PX) / 2;
	}

	#printPictures(state: State): void {
		const span = this.#span();
		const days = daysOfSpan(span);
		if (days.length === 0) return;
		const name = say`Planned and done, in pictures`;
		const pages = () => [
			paperForm(
				state,
				"month-report",
				{ title: name, when: shownSpan(span) },
				monthPictures(readWorkbook(state.workbook), days, PAPER_PICTURE_PX, true),
			),
		];
		printOut({ name, pages }, state);
	}

	#save(state: State): void {
		const days = daysOfSpan(this.#span());
		if (days.length === 0) return;
		const csv = computedCsv(spanTable(readWorkbook(state.workbook), days));
		saveFile("month.csv", csv, "text/csv");
	}
}

/** What the report says; on paper nothing can be taken over. */
function parts(state: State, span: Span, takeOver?: TakeOver): Child[] {
	const read = readWorkbook(state.workbook);
	const days = daysOfSpan(span);
	const items = itemsTable(read, days, takeOver);
	return [
		wideTable(measuresTable(read, days)),
		el(
			"ul",
			{ class: "month-words" },
			...monthWords(read, days, takeOver === undefined).map((words) => el("li", {}, words)),
		),
		items && wideTable(items),
		el("p", {}, itemsNotRecorded(read, days)),
		items &&
			takeOver &&
			el(
				"p",
				{},
				say`A figure can be taken over from ${LEAST_TIMES} times on, so that one not written down matters little, and when ${LEAST_ISSUES} times the largest issue was used, so that what lies opened at the bench is less than a tenth (both are estimates of this program). Counts of the store correct it.`,
			),
	];
}
