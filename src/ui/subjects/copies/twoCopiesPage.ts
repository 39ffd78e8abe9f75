import type { Side } from "../../../core/merge/conflict.ts";
import { say } from "../../../core/say.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { askForFiles } from "../../files/askForFiles.ts";
import { keepOtherCopy, otherCopy, whenOtherCopy } from "../../files/otherCopy.ts";
import type { Opened } from "../../files/readGiven.ts";
import type { OwnPage, Surroundings, View } from "../../page.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { problemList } from "../../sheet/problemList.ts";
import { keepSavedBy, savedBy } from "../../state/savedBy.ts";
import type { State } from "../../state/store.ts";
import { changesList, changesTable } from "./changesTable.ts";
import { conflictChoice } from "./conflictChoice.ts";
import { copyWords } from "./copyWords.ts";
import { type Preview, previewOf } from "./previewOf.ts";
import { twoCopiesTitle } from "./twoCopiesTitle.ts";

/** Two copies of one workbook: what comes from where, what both changed, and both as one. */
export const twoCopiesPage: OwnPage = {
	mount: (place, around) => new TwoCopiesView(place, around),
};

class TwoCopiesView implements View {
	readonly file = twoCopiesTitle.file;
	readonly #around: Surroundings;
	readonly #result = el("div", { class: "two-copies" });
	readonly #status = el("p", { role: "status" });
	readonly #choices = new Map<string, Side>();
	#shown: { readonly other: Opened | undefined; readonly workbook: State["workbook"] } | undefined;

	constructor(place: HTMLElement, around: Surroundings) {
		this.#around = around;
		const name = el("input", {
			type: "text",
			value: savedBy(),
			autocomplete: "name",
			maxlength: 60,
		});
		name.addEventListener("change", () => keepSavedBy(name.value));
		const choose = el("button", { type: "button", class: "main" }, say`Choose the other copy`);
		choose.addEventListener("click", () => askForFiles(keepOtherCopy));
		fill(
			place,
			pageHead(el("h1", {}, twoCopiesTitle.title), twoCopiesTitle.about),
			el(
				"div",
				{ class: "tools" },
				choose,
				el(
					"label",
					{ class: "name-given" },
					say`Your name, by which other copies know your changes (may be blank)`,
					name,
				),
			),
			el("p", { class: "drop-here" }, say`Or drop its files anywhere on this page.`),
			this.#result,
		);
		this.paint(around.store.state);
		whenOtherCopy(() => this.paint(around.store.state));
	}

	paint(state: State): void {
		const other = otherCopy();
		if (this.#shown && other === this.#shown.other && state.workbook === this.#shown.workbook)
			return;
		if (other !== this.#shown?.other) this.#choices.clear();
		this.#shown = { other, workbook: state.workbook };
		fill(this.#result, ...(other ? this.#contents(state, other) : []));
	}

	show(): void {}

	destroy(): void {
		whenOtherCopy(() => undefined);
	}

	#contents(state: State, other: Opened): Child[] {
		const found = previewOf(state, other);
		const leave = el("button", { type: "button" }, say`Leave them apart`);
		leave.addEventListener("click", () => keepOtherCopy(undefined));
		if ("why" in found)
			return [
				el("h2", {}, say`The other copy cannot be brought together with this workbook`),
				el("p", {}, say`Nothing was changed, in this workbook and in that file.`),
				problemList(found.why, this.#around.goTo, say`Found in the other copy`),
				leave,
			];
		const { sheets, together } = found;
		const { conflicts } = together;
		const isNew = conflicts.length > 0 || together.changes.some(({ from }) => from === "theirs");
		const both = el("button", { type: "button", class: "main" }, say`Bring both together`);
		both.addEventListener("click", () => this.#bringTogether(found));
		return [
			...copyWords(other, found).map((words) => el("p", {}, words)),
			found.units && el("p", { class: "reason" }, found.units.message),
			other.problems.length > 0 &&
				problemList(other.problems, this.#around.goTo, say`Found in the other copy`),
			sheets.length > 0 && el("h2", {}, say`What comes from where`),
			sheets.length > 0 && changesTable(sheets),
			...sheets.map(changesList),
			...this.#conflictParts(found),
			!isNew &&
				el(
					"p",
					{ class: "saying" },
					say`The other copy has nothing that is not in this workbook already.`,
				),
			this.#status,
			el("div", { class: "choices-row" }, isNew && both, leave),
		];
	}

	#conflictParts({ together: { conflicts } }: Preview): Child[] {
		if (conflicts.length === 0) return [];
		const list = el("div", { class: "conflicts" });
		const paint = () => {
			const parts = conflicts.map((conflict) =>
				conflictChoice(conflict, this.#choices.get(conflict.key), (side) => {
					this.#choices.set(conflict.key, side);
					this.#sayLeft(conflicts.length);
				}),
			);
			fill(list, ...parts);
			this.#sayLeft(conflicts.length);
		};
		const all = (words: string, side: Side) => {
			const button = el("button", { type: "button" }, words);
			button.addEventListener("click", () => {
				for (const { key } of conflicts) this.#choices.set(key, side);
				paint();
			});
			return button;
		};
		paint();
		return [
			el(
				"h2",
				{},
				conflicts.some(({ unsure }) => unsure)
					? say`Different in the two copies`
					: say`Changed in both copies, each differently`,
			),
			el("p", {}, say`Choose what counts. The newer one is not always the right one.`),
			conflicts.length > 1 &&
				el(
					"div",
					{ class: "choices-row" },
					all(say`All as in this workbook`, "ours"),
					all(say`All as in the other copy`, "theirs"),
				),
			list,
		];
	}

	#sayLeft(all: number): void {
		const chosen = this.#choices.size;
		this.#status.textContent = say`${chosen} of ${all} chosen.`;
	}

	#bringTogether({ together, chosen }: Preview): void {
		const open = together.conflicts.find(({ key }) => !this.#choices.has(key));
		if (open) {
			const left = together.conflicts.length - this.#choices.size;
			this.#status.textContent =
				left === 1
					? say`One is still to be chosen; it is the field that is selected now.`
					: say`${left} are still to be chosen; the first of them is selected now.`;
			const fields = this.#result.querySelectorAll<HTMLInputElement>("fieldset.conflict");
			fields[together.conflicts.indexOf(open)]?.querySelector("input")?.focus();
			return;
		}
		const { workbook, descent } = chosen(this.#choices);
		const other = otherCopy();
		keepOtherCopy(undefined);
		this.#around.store.bringTogether(workbook, descent, other?.isOwnFile && other.file);
		this.#around.tell([
			say`Both copies are one workbook now; Undo takes that back in one step. Save it, and give everyone this file.`,
		]);
	}
}
