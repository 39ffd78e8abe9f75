import { tableOf } from "../../../core/edit/withTexts.ts";
import { say } from "../../../core/say.ts";
import { preparationColumns } from "../../../core/sheets/preparationColumns.ts";
import { roundsSheet } from "../../../core/sheets/rounds.ts";
import { el } from "../../dom/el.ts";
import { litreWords, quantityWords } from "../../format/litreWords.ts";
import { shownDay, shownDayAndYear } from "../../format/shownDay.ts";
import { shownAs } from "../../format/shownFigure.ts";
import type { PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printedFoot } from "../../print/printedHead.ts";
import { uprightTable } from "../../print/uprightTable.ts";
import { truthsOnPaper } from "../../sheet/truthsPart.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { type Mix, mixOfDays, nameOfProductInUse, remarkOn, whyNoMix } from "./mix.ts";
import { mixingCautions } from "./mixingCautions.ts";
import { mixingRules, mixSteps } from "./mixSteps.ts";

/** The mixing sheet: how to mix on each day, and a line to fill in for each preparation. */
export const mixingSheetOut: PrintOut = {
	name: say`Print the mixing sheet`,
	pages: (state) => [
		paperForm(
			state,
			"mixing-sheet",
			{
				title: titleOf(nameOfProductInUse(state)),
				cautions: mixingCautions,
				end: printedFoot(),
			},
			truthsOnPaper(state),
			firstDay(state),
			daysTable(state),
		),
	],
};

function titleOf(product: string): string {
	return product === "" ? say`Mixing chlorine solution` : say`Mixing chlorine solution: ${product}`;
}

function firstDay(state: State): HTMLElement {
	const [first] = mixOfDays(state);
	const steps = first?.mix && mixSteps(first.mix, mixingRules(state));
	const remark = first?.mix ? remarkOn(state, first.mix) : "";
	return el(
		"section",
		{ class: "paper-steps" },
		el("h2", {}, first ? say`On ${shownDayAndYear(first.date)}; other days as in the table` : ""),
		steps
			? el("ol", {}, ...steps.map((words) => el("li", {}, words)))
			: el("p", { class: "reason" }, whyNoMix(state)),
		remark !== "" && el("p", { class: "reason" }, remark),
	);
}

function daysTable(state: State): HTMLElement {
	const preparations = preparationsOfDay(state);
	return uprightTable(
		"mixing-lines",
		[
			say`Day, lot`,
			say`Water`,
			say`Product`,
			say`Makes`,
			say`For`,
			say`Mixed at`,
			say`Discard by`,
			say`Strip, %`,
			say`Initials`,
		],
		mixOfDays(state).map(({ date, mix }) =>
			el(
				"tbody",
				{},
				...preparations.map((name, at) =>
					el(
						"tr",
						{},
						...(at === 0 ? dayCells(date, mix, preparations.length) : []),
						...blanks(name),
					),
				),
			),
		),
	);
}

function dayCells(date: string, mix: Mix | undefined, rows: number): HTMLElement[] {
	const rowspan = String(rows);
	const cell = (words: string) => el("td", { rowspan, class: "amount" }, words);
	return [
		el(
			"th",
			{ scope: "row", rowspan },
			shownDay(date),
			el(
				"span",
				{ class: "beneath" },
				mix && mix.lot !== "" ? say`lot ${mix.lot}` : say`by the label`,
			),
		),
		cell(mix ? litreWords(mix.waterLitres) : "–"),
		cell(mix ? quantityWords(mix.quantity, mix.measure) : "–"),
		cell(
			mix
				? `${litreWords(mix.litres)}, ${shownAs(preparationColumns.strength_made_pct, mix.strengthPct)}\u00a0%`
				: "–",
		),
	];
}

function blanks(name: string): HTMLElement[] {
	return [el("td", {}, name), ...["", "", "", ""].map(() => el("td", { class: "to-write" }))];
}

/** A line for each round where the solution is made for each, else one a day. */
function preparationsOfDay(state: State): string[] {
	const eachRound = unitSetting(state, "solution_made") === "each_round";
	if (!eachRound || unitSetting(state, "reprocessing") !== "in_rounds") return [say`Today`];
	const { header, rows } = tableOf(state.workbook, roundsSheet.file);
	const [start, label] = [header.indexOf("start"), header.indexOf("label")];
	const names = rows.map((cells) => cells[label] || cells[start] || "");
	return names.length > 0 ? names : [say`Today`];
}
