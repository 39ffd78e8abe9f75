import { actsBetween } from "../../../core/plan/today/actsBetween.ts";
import { kitsOn } from "../../../core/plan/today/kitsOn.ts";
import { stopProblems } from "../../../core/plan/today/stopProblems.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { afterPaint } from "../../dom/afterPaint.ts";
import { el, fill } from "../../dom/el.ts";
import { later } from "../../dom/later.ts";
import { renew } from "../../dom/renew.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import type * as OnPages from "../../onPages.ts";
import type { OwnPage, Surroundings, View } from "../../page.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { problemList } from "../../sheet/problemList.ts";
import { TruthsPart } from "../../sheet/truthsPart.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import type { OpenBench } from "../bench/bench.ts";
import { dayCautions } from "../week/dayCautions.ts";
import { actList } from "./actList.ts";
import { kitList } from "./kitList.ts";
import type { KitRow } from "./kitRow.ts";
import { type MomentShown, momentShown } from "./momentShown.ts";
import { nothingWords } from "./nothingWords.ts";
import { shortList } from "./shortList.ts";
import { todayHeadline } from "./todayHeadline.ts";
import { todayTitle } from "./todayTitle.ts";
import { waitsForRound } from "./waitsForRound.ts";
import { whenNoneReady } from "./whenNoneReady.ts";

const MINUTE_MS = 60_000;
/** Days of a plan that are told in one go. */
const DAYS_AT_ONCE = 40;

/** Where things are written down is asked for by a tap: a script of its own. */
const bench = later(() => import("../../onPages.ts"));

/** The day at the bench: what to do by the clock, the kits, what runs short, and large acts to write down what was done. */
export const todayPage: OwnPage = {
	mount: (place, around) => new TodayView(place, around),
};

class TodayView implements View {
	readonly file = todayTitle.file;
	readonly #around: Surroundings;
	readonly #title = el("h1", {});
	readonly #about = el("p", {});
	readonly #days = el("select", { id: "today-day" });
	readonly #said = el("div", { class: "entry-said", role: "status" });
	readonly #truths: TruthsPart;
	readonly #acts = el("div", {});
	readonly #kits = el("div", {});
	readonly #rest = el("div", { class: "today-rest" });
	readonly #clock: ReturnType<typeof setInterval>;
	#chosen: IsoDate | undefined;
	#saidOf: Workbook | undefined;

	constructor(place: HTMLElement, around: Surroundings) {
		this.#around = around;
		this.#truths = new TruthsPart(around.goTo);
		this.#days.addEventListener("change", () => this.#choose(this.#days.value));
		fill(
			place,
			pageHead(this.#title, this.#about),
			this.#truths.element,
			this.#said,
			this.#benchActs(),
			el(
				"div",
				{ class: "today" },
				el(
					"section",
					{ class: "today-acts" },
					el("div", { class: "today-head" }, el("h2", {}, say`What to do`), this.#dayChooser()),
					this.#acts,
				),
				el(
					"div",
					{ class: "today-side" },
					el("section", { class: "today-kits" }, el("h2", {}, say`Kits`), this.#kits),
					this.#rest,
					cautionList(dayCautions),
				),
			),
			this.#tools(),
		);
		this.paint(around.store.state);
		// Goes on with the clock; what is written in is a dialog and stays.
		this.#clock = setInterval(() => this.#paintClock(around.store.state), MINUTE_MS);
	}

	paint(state: State): void {
		// What was said of an entry that has been undone, or built upon, no longer holds.
		if (state.workbook !== this.#saidOf) fill(this.#said);
		const read = readWorkbook(state.workbook);
		const moment = momentShown(state, read, this.#chosen);
		const kits = kitsOn(read, moment.from.date);
		renew(this.#title, todayHeadline(kits) ?? todayTitle.title);
		fill(
			this.#days,
			...moment.days.map((day) => el("option", { value: day }, shownDayAndYear(day))),
		);
		this.#days.value = moment.from.date;
		fill(
			this.#kits,
			kits.length === 0
				? el("p", {}, say`No kit is in the list of kits yet.`)
				: kitList(kits, {
						used: (kit) => this.#open((its) => its.openUse, kit),
						check: (kit) => this.#open((its) => its.openCheck, kit),
					}),
		);
		if (moment.days.length <= DAYS_AT_ONCE) this.#paintPlanned(state, moment, kits);
		// The kits come first: a long plan takes its time to say what is to be done.
		else
			afterPaint(() => {
				if (this.#around.store.state === state) this.#paintPlanned(state, moment, kits);
			});
	}

	#paintPlanned(state: State, moment: MomentShown, kits: readonly KitRow[]): void {
		this.#paintClock(state, moment, kits);
		this.#truths.paint(state, moment.from.date);
		const short = shortList(state, moment.from.date);
		const stops = stopProblems(state.plan.problems);
		fill(
			this.#rest,
			whenNoneReady(state, this.#around.goTo),
			short && el("section", {}, el("h2", {}, say`What runs short`), short),
			stops.length > 0 && problemList(stops, this.#around.goTo, say`What stops a safe round`),
		);
	}

	show(): void {}

	destroy(): void {
		clearInterval(this.#clock);
	}

	#paintClock(state: State, at?: MomentShown, known?: readonly KitRow[]): void {
		const read = readWorkbook(state.workbook);
		const moment = at ?? momentShown(state, read, this.#chosen);
		const kits = known ?? kitsOn(read, moment.from.date);
		this.#about.textContent = moment.words;
		const acts = actsBetween(state.plan, read, moment.from, moment.until);
		const waiting = kits.filter(waitsForRound).map((row) => wordIn(row.kit));
		fill(
			this.#acts,
			acts.length === 0
				? el("p", {}, nothingWords(state))
				: actList(acts, { from: moment.from, isNow: moment.isNow, waiting }),
		);
	}

	#benchActs(): HTMLElement {
		const act = (words: string, onclick: () => void) =>
			el("button", { type: "button", class: "bench-act", onclick }, words);
		return el(
			"div",
			{ class: "bench-acts", role: "group", "aria-label": say`Write down what was done` },
			act(say`A kit was used`, () => this.#open((its) => its.openUse)),
			act(say`No kit was ready`, () => this.#open((its) => its.openNoneReady)),
			act(say`Round done`, () => this.#open((its) => its.openRound)),
			act(say`Kit tested`, () => this.#open((its) => its.openCheck)),
			act(say`Received`, () => this.#open((its) => its.openReceived)),
		);
	}

	#dayChooser(): HTMLElement {
		return el(
			"div",
			{ class: "tools" },
			el("label", { for: this.#days.id }, say`Day`),
			this.#days,
			el("button", { type: "button", onclick: () => this.#choose(undefined) }, say`Today`),
		);
	}

	#tools(): HTMLElement {
		return el(
			"div",
			{ class: "tools" },
			el("button", { type: "button", onclick: () => window.print() }, say`Print this page`),
			el(
				"button",
				{ type: "button", onclick: () => this.#printLog() },
				say`Print a log for the bench`,
			),
		);
	}

	#choose(day: IsoDate | undefined): void {
		this.#chosen = day;
		this.paint(this.#around.store.state);
	}

	async #open(pick: (its: typeof OnPages) => OpenBench, kit?: string): Promise<void> {
		const its = await this.#bring();
		if (!its) return;
		const { store } = this.#around;
		const { entry } = momentShown(store.state, readWorkbook(store.state.workbook), this.#chosen);
		pick(its)({
			around: this.#around,
			at: entry,
			kit,
			wrote: (workbook, words) => this.#wrote(workbook, words),
		});
	}

	async #printLog(): Promise<void> {
		(await this.#bring())?.printLog(this.#around.store.state);
	}

	async #bring() {
		const its = await bench.bring().catch(() => undefined);
		if (!its) this.#around.tell([say`This part could not be loaded. Nothing is lost; try again.`]);
		return its;
	}

	#wrote(workbook: Workbook, words: string): void {
		const { store } = this.#around;
		this.#saidOf = workbook;
		store.edit(workbook);
		fill(
			this.#said,
			el("span", {}, words),
			" ",
			el(
				"button",
				{
					type: "button",
					class: "bench-act",
					onclick: () => store.undo(),
				},
				say`Take it back`,
			),
		);
		this.#said.scrollIntoView({ block: "nearest" });
	}
}
