import { keptCopies } from "../../../core/edit/keptCopies.ts";
import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { capital } from "../../format/capital.ts";
import type { OwnPage, Surroundings, View } from "../../page.ts";
import { portraitPage } from "../../print/portraitPage.ts";
import { printOut } from "../../print/printOut.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { problemList } from "../../sheet/problemList.ts";
import { whyPane } from "../../sheet/whyPane.ts";
import type { State } from "../../state/store.ts";
import { offer } from "../store/entryField.ts";
import { comparedFigures } from "./comparedFigures.ts";
import { type Asked, comparedTable } from "./comparedTable.ts";
import { differingSettings } from "./differingSettings.ts";
import { differingTable } from "./differingTable.ts";
import { keptPart } from "./keptPart.ts";
import { hasAnswer, NOW, type Side, sideOf } from "./side.ts";
import { whatIfTitle } from "./whatIfTitle.ts";
import { whatIfHeadline } from "./whatIfWords.ts";

const MOST_TROUBLES = 5;

/** Two ways of working side by side: the workbook as it is now, and copies of its settings that were kept. */
export const whatIfPage: OwnPage = {
	mount: (place, around) => new WhatIfView(place, around),
};

class WhatIfView implements View {
	readonly file = whatIfTitle.file;
	readonly #around: Surroundings;
	readonly #title = el("h1", {});
	readonly #kept: ReturnType<typeof keptPart>;
	readonly #left = el("select", { id: "what-if-left" });
	readonly #right = el("select", { id: "what-if-right" });
	readonly #choosing: HTMLElement;
	#listed = "";
	readonly #body = el("div", {});
	readonly #pane = el("aside", {
		class: "pane",
		"aria-label": say`Why this number?`,
		tabindex: -1,
	});

	constructor(place: HTMLElement, around: Surroundings) {
		this.#around = around;
		this.#kept = keptPart(around);
		const chooser = (id: string, words: string, list: HTMLSelectElement) => {
			list.addEventListener("change", () => this.#compare());
			return el("p", { class: "entry-field" }, el("label", { for: id }, words), list);
		};
		this.#choosing = el(
			"div",
			{ class: "what-if-choosing" },
			chooser("what-if-left", say`Compare`, this.#left),
			chooser("what-if-right", say`with`, this.#right),
			el("button", { type: "button", onclick: () => this.#print() }, say`Print this page`),
		);
		fill(
			place,
			pageHead(this.#title, whatIfTitle.about),
			this.#kept.element,
			this.#choosing,
			el("div", { class: "what-if" }, this.#body, this.#pane),
		);
		this.#pane.addEventListener("keydown", (event) => {
			if (event.key === "Escape") this.#closePane();
		});
		this.paint(around.store.state);
	}

	paint(state: State): void {
		this.#kept.paint(state);
		const names = keptCopies(state.workbook).map(({ name }) => name);
		const options = [NOW, ...names].map(
			(name) => [name, name || say`The workbook as it is now`] as const,
		);
		for (const list of [this.#left, this.#right]) offer(list, options);
		// Where a copy has come or gone and both sides are the same, the one kept last is compared.
		const listed = names.join("\n");
		if (listed !== this.#listed && this.#left.value === this.#right.value)
			this.#right.value = names.filter((name) => name !== this.#left.value).at(-1) ?? NOW;
		this.#listed = listed;
		this.#compare();
	}

	show(): void {}

	destroy(): void {}

	#sides(): [Side, Side] {
		const { state } = this.#around.store;
		return [sideOf(state, this.#left.value), sideOf(state, this.#right.value)];
	}

	#compare(): void {
		fill(this.#pane);
		const hasCopies = this.#left.options.length > 1;
		this.#choosing.hidden = !hasCopies;
		if (!hasCopies) {
			this.#title.textContent = say`What if? Keep a copy of the settings first`;
			fill(this.#body);
			return;
		}
		if (this.#left.value === this.#right.value) {
			this.#title.textContent = say`Both sides are the same: choose two different ones`;
			fill(this.#body);
			return;
		}
		const sides = this.#sides();
		this.#title.textContent = whatIfHeadline(...sides);
		fill(this.#body, ...this.#troubles(sides), ...parts(sides, this.#ask));
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

	#print(): void {
		const sides = this.#sides();
		const page = (state: State) => [
			portraitPage(state, [], this.#title.textContent ?? "", ...parts(sides)),
		];
		printOut({ name: say`Print this page`, pages: page }, this.#around.store.state);
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
