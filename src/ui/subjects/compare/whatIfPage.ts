import { keptCopies } from "../../../core/edit/keptCopies.ts";
import type { Place } from "../../../core/problem.ts";
import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { renew } from "../../dom/renew.ts";
import { capital } from "../../format/capital.ts";
import type { OwnPage, PrintOut, Surroundings, View } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printedFoot } from "../../print/printedHead.ts";
import { printOut } from "../../print/printOut.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { problemItem, problemList } from "../../sheet/problemList.ts";
import { whyPane } from "../../sheet/whyPane.ts";
import type { State } from "../../state/store.ts";
import { offer } from "../store/entryField.ts";
import { comparedFigures } from "./comparedFigures.ts";
import { type Asked, comparedTable } from "./comparedTable.ts";
import { differingSettings } from "./differingSettings.ts";
import { differingTable } from "./differingTable.ts";
import { keptPart } from "./keptPart.ts";
import { hasAnswer, NOW, type Side, sideOf, TRIED } from "./side.ts";
import { trialOf } from "./trialOf.ts";
import { type TrialPart, trialPart } from "./trialPart.ts";
import { whatIfTitle } from "./whatIfTitle.ts";
import { whatIfHeadline } from "./whatIfWords.ts";

const MOST_TROUBLES = 5;

/** Two ways of working side by side: the workbook as it is now, a copy to try things on, and copies of its settings that were kept. */
export const whatIfPage: OwnPage = {
	mount: (place, around) => new WhatIfView(place, around),
};

class WhatIfView implements View {
	readonly file = whatIfTitle.file;
	readonly #around: Surroundings;
	readonly #title = el("h1", {});
	readonly #kept: ReturnType<typeof keptPart>;
	readonly #trial: TrialPart;
	readonly #left = el("select", { id: "what-if-left" });
	readonly #right = el("select", { id: "what-if-right" });
	readonly #choosing: HTMLElement;
	#listed: readonly string[] = [];
	readonly #body = el("div", {});
	readonly #pane = el("aside", {
		class: "pane",
		"aria-label": say`Why this number?`,
		tabindex: -1,
	});

	constructor(place: HTMLElement, around: Surroundings) {
		this.#around = around;
		this.#kept = keptPart(around);
		this.#trial = trialPart(around, () => this.#paintSides(around.store.state));
		const chooser = (id: string, words: string, list: HTMLSelectElement) => {
			list.addEventListener("change", () => this.#compare());
			return el("p", { class: "entry-field" }, el("label", { for: id }, words), list);
		};
		this.#choosing = el(
			"div",
			{ class: "what-if-choosing" },
			chooser("what-if-left", say`Compare`, this.#left),
			chooser("what-if-right", say`with`, this.#right),
			el(
				"button",
				{ type: "button", onclick: () => printOut(this.#form(), this.#around.store.state) },
				say`Print this page`,
			),
		);
		fill(
			place,
			pageHead(this.#title, whatIfTitle.about),
			this.#trial.element,
			this.#choosing,
			el("div", { class: "what-if" }, this.#body, this.#pane),
			this.#kept.element,
		);
		this.#pane.addEventListener("keydown", (event) => {
			if (event.key === "Escape") this.#closePane();
		});
		this.paint(around.store.state);
	}

	paint(state: State): void {
		this.#trial.paint(state);
		this.#paintSides(state);
	}

	#paintSides(state: State): void {
		this.#kept.paint(state);
		const kept = keptCopies(state.workbook).map(({ name }) => [name, name] as const);
		const tried = trialOf(state).differing.length > 0;
		const others = [...kept, ...(tried ? [[TRIED, say`What you try`] as const] : [])];
		for (const list of [this.#left, this.#right])
			offer(list, [[NOW, say`The workbook as it is now`], ...others]);
		// Where a side has come or gone, what is tried is compared; else, where both are the same, the copy kept last.
		const listed = others.map(([name]) => name);
		const has = (side: string) => listed.includes(side);
		if (has(TRIED) && !this.#listed.includes(TRIED)) {
			this.#left.value = NOW;
			this.#right.value = TRIED;
		} else if (listed.join() !== this.#listed.join() && this.#left.value === this.#right.value)
			this.#right.value = listed.filter((name) => name !== this.#left.value).at(-1) ?? NOW;
		this.#listed = listed;
		this.#compare();
	}

	show({ column }: Place): void {
		if (column !== "") this.#trial.show(column);
	}

	destroy(): void {}

	#sides(): [Side, Side] {
		const { state } = this.#around.store;
		return [sideOf(state, this.#left.value), sideOf(state, this.#right.value)];
	}

	#compare(): void {
		fill(this.#pane);
		const hasOthers = this.#left.options.length > 1;
		this.#choosing.hidden = !hasOthers;
		if (!hasOthers) {
			renew(this.#title, say`What if? Change something in the copy: the workbook stays as it is`);
			fill(this.#body);
			return;
		}
		if (this.#left.value === this.#right.value) {
			renew(this.#title, say`Both sides are the same: choose two different ones`);
			fill(this.#body);
			return;
		}
		const sides = this.#sides();
		renew(this.#title, whatIfHeadline(...sides));
		fill(this.#body, ...this.#troubles(sides), ...this.#heeded(sides), ...parts(sides, this.#ask));
	}

	#ask: Asked = (side, figure, button) => {
		const close = el("button", { type: "button", class: "quiet" }, say`Back to the table`);
		close.addEventListener("click", () => this.#closePane(button));
		const pane = el("div", {});
		fill(this.#pane, el("p", { class: "why-side" }, capital(side.title)), close, pane);
		whyPane(pane, [figure], (place) => this.#around.goTo(side.placeOf(place)));
		this.#pane.scrollIntoView({ block: "nearest" });
		this.#pane.focus();
		this.#asked = button;
	};

	#asked: HTMLElement | undefined;

	#closePane(button = this.#asked): void {
		fill(this.#pane);
		button?.focus();
	}

	/** Why a side has no answer, with a way to what has to be put right. */
	#troubles(sides: readonly Side[]): HTMLElement[] {
		return sides
			.filter((side) => !hasAnswer(side))
			.map((side) =>
				el(
					"section",
					{ class: "what-if-troubles" },
					side.programError
						? el(
								"p",
								{ class: "reason" },
								say`Program error in ${side.title}: ${side.programError}. Your text is safe.`,
							)
						: problemList(
								side.troubles.slice(0, MOST_TROUBLES),
								(place) => this.#around.goTo(side.placeOf(place)),
								say`${capital(side.title)} has no answer`,
							),
				),
			);
	}

	/** What one side asks to heed and the other does not. */
	#heeded(sides: readonly [Side, Side]): HTMLElement[] {
		const messages = sides.map(({ state }) => state.plan.problems.map(({ message }) => message));
		return sides.flatMap((side, at) => {
			const own = side.state.plan.problems.filter(
				({ message, weight }) => weight !== "error" && !messages[1 - at]?.includes(message),
			);
			if (own.length === 0 || !hasAnswer(side)) return [];
			return [
				el(
					"section",
					{ class: "what-if-troubles" },
					el("h2", {}, say`To heed only on one side: ${side.title}`),
					el(
						"ul",
						{ class: "problem-list advice" },
						...own
							.slice(0, MOST_TROUBLES)
							.map((problem) =>
								problemItem(problem, (place) => this.#around.goTo(side.placeOf(place))),
							),
					),
				),
			];
		});
	}

	/** Two sides that are the same are no comparison. */
	get onPaper(): PrintOut | undefined {
		const hasTwo = this.#left.options.length > 1 && this.#left.value !== this.#right.value;
		return hasTwo ? this.#form() : undefined;
	}

	#form(): PrintOut {
		const sides = this.#sides();
		const pages = (state: State) => [
			paperForm(
				state,
				"two-sides",
				{ title: this.#title.textContent ?? "", end: printedFoot() },
				...parts(sides),
			),
		];
		return { name: say`Print this page`, pages };
	}
}

function parts(sides: readonly [Side, Side], asked?: Asked): HTMLElement[] {
	const [{ state: left }, { state: right }] = sides;
	return [
		differingTable(differingSettings(left, right), sides),
		comparedTable(comparedFigures(left, right), sides, asked),
		el(
			"p",
			{ class: "hint" },
			say`First day and number of days are those of the workbook on both sides, so that the figures are over the same days; using a copy leaves them as they are. Better and worse are said only of the times no kit is ready when needed: fewer kits or litres can mean less work or less safety.`,
		),
	];
}
