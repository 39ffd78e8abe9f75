import { routine } from "../../../core/edit/monday/routine.ts";
import { withUsageTaken } from "../../../core/edit/withUsageTaken.ts";
import { daysOfBooks } from "../../../core/plan/record/daysOfBooks.ts";
import { itemsOverDays } from "../../../core/plan/record/itemsOverDays.ts";
import { roundsOverDays } from "../../../core/plan/record/roundsOverDays.ts";
import { type UsageLearned, usageLearned } from "../../../core/plan/record/usageLearned.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { addDays, DAYS_PER_QUARTER, type IsoDate } from "../../../core/values/date.ts";
import { el, fill } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import type { State } from "../../state/store.ts";
import { LOOKED_AT, type StepPart } from "./mondayStep.ts";

/** Digits of a figure that is taken over: more would only seem exact. */
const DIGITS = 3;

/** What goes each time by the books of the last quarter, beside what the plan takes; enough evidence can be taken over. */
export const usageStep: StepPart = ({ store }, { done, keep }) => {
	const place = el("ul", { class: "short-list" });
	const take = ({ row, each }: UsageLearned) => {
		const { workbook } = store.state;
		const to = shownDay(routine(workbook)?.past.at(-1) ?? "");
		const quantity = Number(each.toPrecision(DIGITS));
		keep(
			withUsageTaken(
				workbook,
				row.line,
				quantity,
				say`taken from the books of the quarter to ${to}`,
			),
			say`${row.value.item}: the plan takes ${shownPlain(quantity)} now.`,
		);
	};
	return {
		element: el(
			"div",
			{},
			place,
			el("button", { type: "button", onclick: () => done(store.state.workbook, "") }, LOOKED_AT),
		),
		paint(state) {
			const found = learned(state);
			fill(
				place,
				...(found.length === 0
					? [
							el(
								"li",
								{},
								say`Nothing to take over: the books and the record of rounds do not yet say enough, or say the same.`,
							),
						]
					: found.map((each) => line(each, take))),
			);
		},
	};
};

function quarter(last: IsoDate): IsoDate[] {
	return Array.from({ length: DAYS_PER_QUARTER }, (_, at) =>
		addDays(last, at + 1 - DAYS_PER_QUARTER),
	);
}

/** Lines of usage.csv for which the books say something else, with evidence enough. */
export function learned(state: State): UsageLearned[] {
	const last = routine(state.workbook)?.past.at(-1);
	if (last === undefined) return [];
	const read = readWorkbook(state.workbook);
	const days = daysOfBooks(read, quarter(last));
	const rounds = roundsOverDays(read, days);
	return itemsOverDays(read, days).flatMap((item) => {
		const found = usageLearned(read, item, rounds, days.length);
		if (found?.evidence !== "enough") return [];
		return Number(found.each.toPrecision(DIGITS)) === found.row.value.quantity ? [] : [found];
	});
}

function line(found: UsageLearned, take: (found: UsageLearned) => void): HTMLElement {
	const { row, each } = found;
	const { item, basis, quantity } = row.value;
	return el(
		"li",
		{},
		say`${item}: ${shownPlain(Number(each.toPrecision(DIGITS)))} for each ${shownWord(basis)} by the books; ${shownPlain(quantity)} in the plan.`,
		" ",
		el(
			"button",
			{
				type: "button",
				"aria-label": say`${item}: take this figure over`,
				onclick: () => take(found),
			},
			say`Take this figure over`,
		),
	);
}
