import type { SafetyTruth } from "../../core/plan/today/safetyTruths.ts";
import { ordersOneByOne, safetyTruths } from "../../core/plan/today/safetyTruths.ts";
import type { TruthKind } from "../../core/plan/today/truthKind.ts";
import { readWorkbook } from "../../core/read/readWorkbook.ts";
import { say } from "../../core/say.ts";
import type { IsoDate } from "../../core/values/date.ts";
import { type Child, el, fill } from "../dom/el.ts";
import { renew } from "../dom/renew.ts";
import { semicolon } from "../format/semicolon.ts";
import type { Surroundings } from "../page.ts";
import type { State } from "../state/store.ts";
import { dayShown } from "../subjects/today/momentShown.ts";
import { problemItem } from "./problemList.ts";

const words: Readonly<Record<TruthKind, string>> = {
	none_ready: say`no kit is ready`,
	number: say`a number is missing or cannot be right`,
	water: say`water cannot be ready in time`,
	soak: say`the soak may be too short or too weak`,
	lot: say`the chlorine lot is too small, of unknown age, or none can be used`,
	step: say`a step is lacking`,
	hands: say`there are too few people`,
	kits: say`there are too few kits`,
	short: say`stock runs out before an order can arrive`,
	late: say`an order is late`,
	count: say`stock has not been counted for long`,
};

/** So many of a kind are told in full; the list of problems has all. */
const MOST_OF_A_KIND = 3;

/** The worst, named; the rest is a number. */
const MOST_NAMED = 3;

/** What is to be known before a round, under the answer of a page that relies on it: a line, and behind it each in full. */
export class TruthsPart {
	readonly element = el("div", { class: "truths-place" });
	readonly #goTo: Surroundings["goTo"];

	constructor(goTo: Surroundings["goTo"]) {
		this.#goTo = goTo;
	}

	/** Holds its place until the list is worked out, and says so: an empty place would say that there is nothing. */
	holdPlace(): void {
		fill(this.element, el("p", { class: "truths" }, ...knowFirst(say`being worked out`)));
	}

	/** The list as a piece for `soon`: an item of the order at a time. */
	piece(state: State): () => boolean {
		const orders = ordersOneByOne(state.plan);
		return () => {
			if (!orders.next().done) return true;
			this.paint(state);
			return false;
		};
	}

	/** @param day of which the kits are told; today where none is chosen */
	paint(state: State, day: IsoDate = dayShown(state)): void {
		const isOpen = this.element.querySelector("details")?.open ?? false;
		const truths = truthsOf(state, day);
		renew(
			this.element,
			truths.length > 0 &&
				el(
					"details",
					{ class: "truths", open: isOpen },
					el("summary", {}, ...lineOf(truths)),
					el(
						"ul",
						{ class: "truth-list" },
						...truths.flatMap(({ problems }) =>
							problems.slice(0, MOST_OF_A_KIND).map((problem) => problemItem(problem, this.#goTo)),
						),
					),
				),
		);
	}
}

/** The same line for paper; undefined where there is nothing to know. */
export function truthsOnPaper(state: State): HTMLElement | undefined {
	const truths = truthsOf(state, dayShown(state));
	return truths.length === 0 ? undefined : el("p", { class: "truths" }, ...lineOf(truths));
}

function truthsOf(state: State, day: IsoDate): SafetyTruth[] {
	return safetyTruths(state.plan, readWorkbook(state.workbook), day);
}

function lineOf(truths: readonly SafetyTruth[]): Child[] {
	const named = truths
		.slice(0, MOST_NAMED)
		.map(({ kind }) => words[kind])
		.join(semicolon);
	const left = truths.length - MOST_NAMED;
	return knowFirst(left > 0 ? say`${named}; and ${left} more` : named);
}

function knowFirst(line: string): Child[] {
	return [
		el("span", { class: "problem-mark", "aria-hidden": "true" }, "!"),
		" ",
		el("strong", {}, say`Know first:`),
		` ${line}.`,
	];
}
