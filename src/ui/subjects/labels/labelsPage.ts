import { say } from "../../../core/say.ts";
import { date } from "../../../core/values/date.ts";
import { dateTime } from "../../../core/values/dateTime.ts";
import { el, fill } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import type { OwnPage, PrintOut, Surroundings, View } from "../../page.ts";
import { printOut } from "../../print/printOut.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { TruthsPart } from "../../sheet/truthsPart.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { waysOf } from "../../state/waysOf.ts";
import { mixingCautions } from "../mixing/mixingCautions.ts";
import { labelSheets, sheetsFor } from "./labelSheets.ts";
import { labelsTitle } from "./labelsTitle.ts";
import {
	kitsToLabel,
	labelsOfASet,
	mixesInUse,
	type WantedLabels,
	wantedLabels,
} from "./wantedLabels.ts";

const MOST_OF_A_KIND = 40;

/** Labels for the solution, the rinse buckets and the kits: how many of each, seen before they are printed. */
export const labelsPage: OwnPage = {
	mount: (place, around) => new LabelsView(place, around),
};

class LabelsView implements View {
	readonly file = labelsTitle.file;
	readonly #around: Surroundings;
	readonly #truths: TruthsPart;
	readonly #solutions: HTMLInputElement;
	readonly #mix = el("select", {});
	readonly #made = el("input", { type: "datetime-local" });
	readonly #rinseSets: HTMLInputElement;
	readonly #perKit = countField(1);
	readonly #done = el("input", { type: "date" });
	readonly #count = el("p", { class: "label-count", role: "status" });
	readonly #preview = el("div", { class: "label-preview" });

	constructor(place: HTMLElement, around: Surroundings) {
		this.#around = around;
		this.#truths = new TruthsPart(around.goTo);
		// Where nothing is mixed or rinsed there is nothing to label; a person may still ask for it.
		const { treated, isMixed } = waysOf(around.store.state);
		this.#solutions = countField(isMixed ? 1 : 0);
		this.#rinseSets = countField(treated.size === 0 || treated.has("chlorine") ? 1 : 0);
		const print = el("button", { type: "button", class: "main" }, say`Print these labels`);
		print.addEventListener("click", () => this.#print());
		const form = el(
			"div",
			{ class: "label-form" },
			fieldset(
				say`Chlorine solution`,
				[say`How many`, this.#solutions],
				[say`Lot`, this.#mix],
				[say`Made at (blank: write it by hand)`, this.#made],
			),
			fieldset(say`Rinse buckets`, [say`How many sets`, this.#rinseSets]),
			fieldset(
				say`Kits, by the state of each`,
				[say`How many for each kit`, this.#perKit],
				[say`Done on, where nothing is recorded (blank: by hand)`, this.#done],
			),
		);
		form.addEventListener("input", () => this.#paintPreview(this.#around.store.state));
		fill(
			place,
			pageHead(el("h1", {}, labelsTitle.title), labelsTitle.about),
			this.#truths.element,
			form,
			el("div", { class: "tools" }, print, this.#count),
			this.#preview,
			cautionList(mixingCautions),
		);
		this.paint(around.store.state);
	}

	paint(state: State): void {
		this.#truths.paint(state);
		const chosen = this.#mix.selectedIndex;
		const lots = mixesInUse(state).map((row) => wordIn(row.lot) || say`no lot in the store`);
		fill(
			this.#mix,
			...lots.map((lot, at) => el("option", { value: at }, lot)),
			el("option", { value: lots.length }, say`blank: write it by hand`),
		);
		this.#mix.selectedIndex = chosen >= 0 && chosen <= lots.length ? chosen : 0;
		this.#paintPreview(state);
	}

	show(): void {}

	destroy(): void {}

	#paintPreview(state: State): void {
		const labels = wantedLabels(state, this.#wanted());
		const sheets = sheetsFor(labels.length);
		const bucketsEach = labelsOfASet(state);
		this.#count.textContent = say`${labels.length} labels on ${counted(sheets, "sheet")}: ${this.#wanted().solutions} for solution, ${this.#wanted().rinseSets * bucketsEach} for rinse buckets, ${this.#wanted().perKit * kitsToLabel(state).length} for kits.`;
		fill(this.#preview, ...labels);
	}

	#wanted(): WantedLabels {
		const made = dateTime().schema.safeParse(this.#made.value);
		const done = date().schema.safeParse(this.#done.value);
		return {
			solutions: countIn(this.#solutions),
			mix: this.#mix.selectedIndex,
			made: made.success ? made.data : undefined,
			rinseSets: countIn(this.#rinseSets),
			perKit: countIn(this.#perKit),
			done: done.success ? done.data : undefined,
		};
	}

	get onPaper(): PrintOut | undefined {
		const labels = wantedLabels(this.#around.store.state, this.#wanted());
		if (labels.length === 0) return undefined;
		return { name: say`Labels`, pages: (state) => labelSheets(state, labels) };
	}

	#print(): void {
		const { store, tell } = this.#around;
		const { onPaper } = this;
		if (onPaper) printOut(onPaper, store.state);
		else tell([say`Choose at least one label.`]);
	}
}

function countField(count: number): HTMLInputElement {
	return el("input", {
		type: "number",
		min: 0,
		max: MOST_OF_A_KIND,
		step: 1,
		value: count,
		class: "count",
	});
}

/** Whatever is typed, a whole number from none to the most of a kind. */
function countIn(field: HTMLInputElement): number {
	const count = Math.floor(Number(field.value));
	return Number.isFinite(count) ? Math.min(MOST_OF_A_KIND, Math.max(0, count)) : 0;
}

function fieldset(
	legend: string,
	...fields: readonly (readonly [string, HTMLElement])[]
): HTMLElement {
	return el(
		"fieldset",
		{},
		el("legend", {}, legend),
		...fields.map(([words, field]) => el("label", {}, el("span", {}, words), field)),
	);
}
