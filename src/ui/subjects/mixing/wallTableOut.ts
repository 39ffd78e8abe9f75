import { valueIn } from "../../../core/outcome.ts";
import { assumedAgeOn } from "../../../core/plan/chlorine/assumedAge.ts";
import { isOfUnknownAge } from "../../../core/plan/chlorine/isOfUnknownAge.ts";
import type { LotFigures } from "../../../core/plan/chlorine/lotFigures.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { preparationColumns } from "../../../core/sheets/preparationColumns.ts";
import { endOfMonth } from "../../../core/values/isoMonth.ts";
import { el } from "../../dom/el.ts";
import { litreWords, quantityWords } from "../../format/litreWords.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import type { PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { uprightTable } from "../../print/uprightTable.ts";
import { standing } from "../../shell/standing.ts";
import type { State } from "../../state/store.ts";
import { printedSetting, unitSetting } from "../../state/unitSetting.ts";
import type { Mix } from "./mix.ts";
import { mixingCautions } from "./mixingCautions.ts";
import { type MixingRules, mixingRules, settleWords } from "./mixSteps.ts";
import { storeOf } from "./strengthView.ts";
import { type WallPage, wallPages } from "./wallPages.ts";

/** The wall tables: pages of their own for each product, in big type, for the lots in the store. */
export const wallTableOut: PrintOut = {
	name: say`Print the wall tables`,
	pages: (state) => wallPages(state).map((page) => wallPage(state, page)),
};

function wallPage(state: State, { product, lots, mixes, useFirst }: WallPage): HTMLElement {
	const pct = printedSetting(state, "target_strength_pct");
	const start = unitSetting(state, "plan_start");
	return paperForm(
		state,
		`wall-page${lots.length === 1 ? " one-lot" : ""}`,
		{
			title: say`${product}: mixing ${pct.value === undefined ? TO_WRITE : shownPlain(pct.value)} % solution`,
			when: say`made for ${start === undefined ? TO_WRITE : shownDayAndYear(start)}`,
			cautions: mixingCautions,
			end: [
				el(
					"div",
					{ class: "sign-line" },
					el("span", {}, say`Prepared by, date`),
					el("span", {}, say`Checked by, date`),
				),
				el("p", { class: "standing" }, standing),
			],
		},
		el("p", { class: "wall-how" }, howWords(mixes[0]?.measure, mixingRules(state)), " ", pct.why),
		mixes[0]?.measure === "g" &&
			el("p", { class: "wall-how" }, settleWords(printedSetting(state, "settle_minutes"))),
		...lots.map((lot) =>
			lotPart(
				state,
				mixes.filter((mix) => mix.lot === lot),
				lot === useFirst,
			),
		),
	);
}

function howWords(measure: string | undefined, { life, water }: MixingRules): string {
	return [
		water.value === "boiled"
			? say.safety`Water first, boiled and cooled, into a plastic container; then the product into the water.`
			: say.safety`Water first, cold, into a plastic container; then the product into the water.`,
		water.why,
		measure !== "mL" && say.safety`Wait until all of it has dissolved.`,
		say.safety`Discard after ${life.value ?? TO_WRITE} hours at most.`,
		life.why,
	]
		.filter(Boolean)
		.join(" ");
}

function lotPart(state: State, mixes: readonly Mix[], first: boolean): HTMLElement {
	const [{ lot, measure } = { lot: "", measure: "" }] = mixes;
	const tablets = measure === "tablet";
	const name = lot === "" ? say.safety`No lot in the store: by the label` : say`For lot ${lot}`;
	return el(
		"section",
		{ class: "wall-lot" },
		el("h2", {}, first ? say`${name} – use this one first` : name),
		el("p", { class: "valid" }, validWords(state, mixes)),
		ageWords(state, mixes),
		uprightTable(
			`wall-lines${measure === "mL" ? " marked-lines" : ""}`,
			[
				say.safety`To make`,
				say.safety`Water first`,
				say.safety`Then product`,
				...(tablets || measure === "g" ? [] : [say.safety`Fill up to`]),
				say`Makes`,
				...(tablets ? [say`Exact for`] : []),
			],
			[el("tbody", {}, ...mixes.map((mix) => wallRow(mix, tablets)))],
		),
	);
}

function wallRow(mix: Mix, tablets: boolean): HTMLElement {
	return el(
		"tr",
		{},
		el("th", { scope: "row" }, litreWords(mix.litres)),
		el("td", {}, waterWords(mix)),
		el("td", { class: "product" }, quantityWords(mix.quantity, mix.measure)),
		mix.measure === "mL" && el("td", {}, say`the ${litreWords(mix.litres)} mark`),
		el("td", {}, `${shownAs(preparationColumns.strength_made_pct, mix.strengthPct)}\u00a0%`),
		tablets && el("td", {}, litreWords(mix.exactLitres ?? mix.litres)),
	);
}

/** Water that a jug or a marked bucket can measure, a little less than all of it: the mark says when it is enough. */
function waterWords({ measure, waterLitres }: Mix): string {
	if (measure !== "mL") return litreWords(waterLitres);
	const step = waterLitres < SMALL_LITRES ? 0.1 : 0.5;
	const litres = Math.floor(waterLitres / step + 1e-9) * step;
	return say`about ${litreWords(litres)}`;
}

/** Below it water is measured in tenths of a litre, above in halves. */
const SMALL_LITRES = 2;

/** That nobody knows how old the lot is: its table is for an age that is only assumed, on its weakest day. */
function ageWords(state: State, mixes: readonly Mix[]): HTMLElement | false {
	const lot = lotOf(state, mixes);
	const until = mixes[0]?.until ?? "";
	if (!lot || until === "" || !isOfUnknownAge(lot.product.row.value, lot.lot.value)) return false;
	const days = valueIn(assumedAgeOn(readWorkbook(state.workbook), lot.lot, until));
	return (
		days !== undefined &&
		el(
			"p",
			{ class: "valid" },
			say.safety`Its age is not known: this table is for ${days} days old.`,
		)
	);
}

function lotOf(state: State, [mix]: readonly Mix[]): LotFigures | undefined {
	return storeOf(state)?.lots.lots.find(
		({ lot: { value } }) => value.item === mix?.product && value.lot === mix.lot,
	);
}

/** How long this part of the page may hang: it is dosed for the lot's weakest day until then. */
function validWords(state: State, mixes: readonly Mix[]): string {
	const lot = lotOf(state, mixes);
	const until = mixes[0]?.until ?? "";
	if (!lot || until === "")
		return say.safety`Not for any lot: make a new table as soon as one is in the store.`;
	const why = whyUntil(until, lot.lot.value.expires_on);
	return say.safety`Only for this lot, and only until ${shownDayAndYear(until)} (${why}): then take this down and print a new one.`;
}

function whyUntil(until: string, expiresOn: string | null): string {
	if (until === expiresOn) return say`the lot's last day`;
	return until === endOfMonth(until)
		? say`measured out for its weakest day of the month`
		: say`after it the lot has lost too much strength`;
}
