import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { NOT_COVERED } from "../../../core/plan/water/waterTable.ts";
import { say } from "../../../core/say.ts";
import { waterSheet } from "../../../core/sheets/water.ts";
import { waterSourcesSheet } from "../../../core/sheets/waterSources.ts";
import { el } from "../../dom/el.ts";
import { withinSentence } from "../../dom/withinSentence.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { hashOf } from "../../shell/hashOf.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";

const { columns } = waterSheet;

/** Litres and containers of the first day; undefined where they wait for something. */
export function waterHeadline(state: State): string | undefined {
	const [first] = rowsOf(state.plan, waterSheet);
	const litres = numberIn(first?.litres_set_aside);
	const containers = numberIn(first?.containers);
	if (litres === undefined || containers === undefined) return undefined;
	return say`Fetch ${shownAs(columns.litres_set_aside, litres)} L on ${shownDay(wordIn(first?.date))}: ${counted(containers, "container")}`;
}

/** The water of the first day, from which source, and what is in it. */
export function waterView(state: State): HTMLElement | undefined {
	const [first] = rowsOf(state.plan, waterSheet);
	const litres = numberIn(first?.litres_set_aside);
	const expected = numberIn(first?.litres_expected);
	const containers = numberIn(first?.containers);
	const each = unitSetting(state, "water_container_litres");
	if (litres === undefined || expected === undefined || containers === undefined) return undefined;
	const taken = wordIn(first?.taken_from);
	const missing = taken.includes(NOT_COVERED);
	return el(
		"section",
		{ class: "said" },
		el(
			"p",
			{},
			say`On ${shownDay(wordIn(first?.date))} prepare for ${shownAs(columns.litres_set_aside, litres)} L, in ${counted(containers, "container")} of ${shownPlain(each ?? 0)} L; on average about ${shownAs(columns.litres_expected, expected)} L of it is used.`,
		),
		el(
			"p",
			missing ? { class: "reason" } : {},
			taken !== "" && say`From: ${taken}.`,
			" ",
			missing && say`The sources do not give enough: find another, or fetch the day before.`,
			" ",
			...withinSentence(
				(link) =>
					taken === ""
						? say`All of it counts as from one source. List your sources in their order on ${link}.`
						: say`The order stands on ${link}.`,
				el("a", { href: hashOf(waterSourcesSheet.file) }, waterSourcesSheet.title),
			),
		),
	);
}
