import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { mixingDaysSheet } from "../../../core/sheets/mixingDays.ts";
import { el, fill } from "../../dom/el.ts";
import { litreWords, quantityWords } from "../../format/litreWords.ts";
import { shownDay } from "../../format/shownDay.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { waysOf } from "../../state/waysOf.ts";
import { mishapParts } from "./firstAidPage.ts";
import { firstAidTitle } from "./firstAidTitle.ts";
import { type Mix, mixesOfFirstDay, mixOfDays, remarkOn, whyNoMix } from "./mix.ts";
import { mixingRules, mixSteps } from "./mixSteps.ts";

/** How to mix one preparation on the first day, in words, with a choice of containers. */
export function mixingView(state: State): HTMLElement | undefined {
	if (!waysOf(state).isMixed) return nothingMixed();
	const date = wordIn(rowsOf(state.plan, mixingDaysSheet)[0]?.date);
	if (date === "") return undefined;
	const mixes = mixesOfFirstDay(state);
	const [own] = mixes;
	if (!own)
		return el(
			"section",
			{ class: "mix" },
			el("h2", {}, say`Nothing to mix by on ${shownDay(date)}`),
			el("p", { class: "reason" }, whyNoMix(state)),
		);
	const steps = el("ol", { class: "mix-steps", "aria-live": "polite" });
	const rules = mixingRules(state);
	const show = (mix: Mix) =>
		fill(steps, ...mixSteps(mix, rules).map((words) => el("li", {}, words)));
	show(own);
	const remark = remarkOn(state, own);
	return el(
		"section",
		{ class: "mix", "aria-label": say`How to mix it` },
		el("h2", {}, say`On ${shownDay(date)}`),
		sizeChooser(mixes, show),
		steps,
		remark !== "" && el("p", { class: "mix-remark" }, remark),
		el(
			"p",
			{ class: "hint" },
			say`Cold water, plastic, product into water: common practice, no source. The maker's instructions come first.`,
		),
		el("details", { class: "first-aid" }, el("summary", {}, firstAidTitle.title), mishapParts()),
	);
}

/** Where no piece goes into chlorine. */
function nothingMixed(): HTMLElement {
	return el(
		"section",
		{ class: "mix" },
		el("h2", {}, say`Rounds mix no solution`),
		el(
			"p",
			{},
			say`No piece of a kit goes into chlorine, and none is made for wiping, so there is nothing to mix. What is made for the ward besides stands under its own heading.`,
		),
	);
}

/** A list of container sizes; the unit's own preparation stands first. */
function sizeChooser(mixes: readonly Mix[], show: (mix: Mix) => void): HTMLElement {
	const select = el(
		"select",
		{ id: "mix-litres" },
		...mixes.map((mix, at) =>
			el(
				"option",
				{ value: at },
				at === 0
					? say`${litreWords(mix.litres)} (this unit's preparation)`
					: litreWords(mix.litres),
			),
		),
	);
	select.addEventListener("change", () => {
		const mix = mixes[Number(select.value)];
		if (mix) show(mix);
	});
	return el(
		"p",
		{ class: "mix-choice" },
		el("label", { for: "mix-litres" }, say`Make up to`),
		select,
	);
}

/** How the amount rises as the lot fades, under the instruction of the first day. */
export function mixingDaysView(state: State): HTMLElement | undefined {
	const view = mixingView(state);
	const words = daysWords(state);
	if (view && words !== undefined) view.append(el("p", {}, words));
	return view;
}

function daysWords(state: State): string | undefined {
	const mixed = mixOfDays(state).flatMap(({ date, mix }) => (mix ? [{ date, mix }] : []));
	const [first, last] = [mixed[0], mixed.at(-1)];
	if (!first || !last) return undefined;
	const amount = ({ mix }: typeof first) => {
		const quantity = quantityWords(mix.quantity, mix.measure);
		return mix.lot === "" ? quantity : say`${quantity} of lot ${mix.lot}`;
	};
	return mixed.every((day) => amount(day) === amount(first))
		? say`The same on every day: ${amount(first)} until ${shownDay(last.date)}.`
		: say`From ${amount(first)} on ${shownDay(first.date)} to ${amount(last)} on ${shownDay(last.date)}: look at the line of the day.`;
}
