import type { ComputedRow } from "../../../core/computedTable.ts";
import { say } from "../../../core/say.ts";
import type { mixingSheet } from "../../../core/sheets/mixing.ts";
import { preparationColumns } from "../../../core/sheets/preparationColumns.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import { el } from "../../dom/el.ts";
import { amountOf } from "../../format/amountOf.ts";
import { EXACT } from "../../format/litreWords.ts";
import { shownTime } from "../../format/moment.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { Printed } from "../../state/unitSetting.ts";
import { remarkOnLotIn } from "../mixing/mix.ts";
import { discardAt, usableHours } from "./discardAt.ts";
import { label, labelLine } from "./label.ts";

/** A percent (grams in 100 mL) in milligrams a litre. */
const MG_PER_LITRE_PER_PCT = 10_000;

export interface SolutionLabel {
	readonly unit: string;
	readonly targetPct: Printed<number>;
	readonly lifeHours: Printed<number>;
	/** What it is made for, and is poured away after. */
	readonly madeFor: MadeFor;
	/** The row of the mixing sheet it is mixed by; undefined leaves room to write. */
	readonly mix: ComputedRow<typeof mixingSheet> | undefined;
	readonly water: Printed<"tap" | "boiled">;
	readonly made: LocalTime | undefined;
}

export type MadeFor = "round" | "kit" | "day";

/** The label of a vessel of chlorine solution. What is not known is left to write in. */
export function solutionLabel({
	unit,
	targetPct,
	lifeHours,
	madeFor,
	mix,
	water,
	made,
}: SolutionLabel): HTMLElement {
	const pct = targetPct.value;
	const percent = pct === undefined ? TO_WRITE : shownPlain(pct);
	const mgPerLitre = pct === undefined ? "______" : shownPlain(pct * MG_PER_LITRE_PER_PCT);
	const life = lifeHours.value;
	const hours = life === undefined ? TO_WRITE : shownPlain(usableHours(life));
	const discard = made && life !== undefined ? shownTime(discardAt(made, life)) : undefined;
	const ofLot = mix ? remarkOnLotIn(mix) : "";
	const why = [targetPct.why, lifeHours.why, mix ? water.why : ""].filter(Boolean).join(" ");
	return label(
		`solution${ofLot + why === "" ? "" : " label-tight"}`,
		unit,
		el("h2", {}, say.safety`Chlorine solution`, " ", el("strong", {}, `${percent} %`)),
		el(
			"p",
			{},
			el("strong", {}, `${mgPerLitre}\u00a0mg/L`),
			" ",
			say.safety`available chlorine. For clean kits only. NOT for drinking or hands.`,
		),
		el("p", {}, mixWords(mix, water.value)),
		ofLot !== "" && el("p", { class: "label-small" }, ofLot),
		labelLine(say.safety`Made at`, made && shownTime(made)),
		madeFor === "day"
			? labelLine(say.safety`DISCARD AT`, discard)
			: el("p", { class: "label-line" }, el("strong", {}, discardAfter[madeFor])),
		el("p", { class: "label-small" }, latestWords(madeFor, hours, discard)),
		why !== "" && el("p", { class: "label-small" }, why),
		el(
			"div",
			{ class: "label-pair" },
			labelLine(say.safety`Made by`, undefined),
			labelLine(say.safety`Checked by`, undefined),
		),
		el(
			"p",
			{ class: "label-caution" },
			say.safety`NEVER with vinegar, acid, ammonia or urine: poisonous gas. Gloves, eye protection, apron; good ventilation. Covered, away from children.`,
		),
	);
}

/** What it was made for. */
const discardAfter = {
	round: say.safety`DISCARD at the end of this round`,
	kit: say.safety`DISCARD after this kit's soak`,
};

function latestWords(madeFor: MadeFor, hours: string, discard: string | undefined): string {
	if (madeFor === "day") return say.safety`${hours} h after making; sooner if dirty or cloudy.`;
	return discard === undefined
		? say.safety`At the latest ${hours} h after making; sooner if dirty or cloudy.`
		: say.safety`At the latest ${discard}, ${hours} h after making; sooner if dirty or cloudy.`;
}

function mixWords(mix: SolutionLabel["mix"], water: SolutionLabel["water"]["value"]): string {
	const litres = numberIn(mix?.litres);
	const quantity = numberIn(mix?.product_quantity);
	const waterLitres = numberIn(mix?.water_litres);
	if (litres === undefined || quantity === undefined || waterLitres === undefined)
		return say.safety`Product ______________ lot ________ litres ______`;
	const lot = wordIn(mix?.lot) || "________";
	const all = shownAs(preparationColumns.litres, litres);
	const first = shownAs(preparationColumns.water_litres, waterLitres);
	const amount = amountOf(quantity, wordIn(mix?.product_measure), EXACT);
	const product = wordIn(mix?.product);
	return water === "boiled"
		? say.safety`${all} L: ${first} L of boiled, cooled water, then ${amount} ${product}, lot ${lot}`
		: say.safety`${all} L: ${first} L of water, then ${amount} ${product}, lot ${lot}`;
}
