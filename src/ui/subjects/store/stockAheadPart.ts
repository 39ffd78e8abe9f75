import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { stockAheadSheet } from "../../../core/sheets/stockAhead.ts";
import { el, fill } from "../../dom/el.ts";
import { pictureFigure, pictureWidth } from "../../dom/pictureFigure.ts";
import { textScale } from "../../dom/textScale.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { shownDate } from "../../format/shownDay.ts";
import type { SheetPart } from "../../page.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { orderLines } from "../order/orderLines.ts";
import { offer } from "./entryField.ts";
import { type Spacing, type StockOfItem, stepped, stockOfItem } from "./stockOfItem.ts";
import type { StockShown } from "./stockPicture.ts";
import { stockSentence } from "./stockWords.ts";

/** One item's stock ahead as a picture: which item, and weeks or months, are for the person to choose. */
export function stockAheadPart(): SheetPart {
	const chooser = el("select", { id: "stock-item" });
	const steps = (["weeks", "months"] as const).map((step) => ({
		step,
		button: el("button", { type: "button" }, step === "weeks" ? say`13 weeks` : say`Months`),
	}));
	const figure = el("div", {});
	const element = el(
		"section",
		{ class: "stock-ahead", "aria-label": say`One item's stock` },
		el(
			"p",
			{ class: "choosing" },
			el("label", { for: "stock-item" }, say`Item`),
			chooser,
			...steps.map(({ button }) => button),
		),
		figure,
	);
	let step: Spacing = "weeks";
	let shown: State | undefined;
	const draw = () => {
		for (const each of steps) each.button.setAttribute("aria-pressed", String(each.step === step));
		const stock = shown && stockOfItem(shown, chooser.value);
		const room = (element.clientWidth || window.innerWidth - 32) / textScale();
		fill(figure, stock && drawing(stock, step, room));
		element.hidden = chooser.options.length === 0;
	};
	chooser.addEventListener("change", draw);
	for (const each of steps)
		each.button.addEventListener("click", () => {
			step = each.step;
			draw();
		});
	return {
		element,
		paint(state) {
			shown = state;
			offerItems(chooser, state);
			draw();
		},
	};
}

/** Every item of the sheet; at first the one that runs out first. */
function offerItems(chooser: HTMLSelectElement, state: State): void {
	const isFirst = chooser.options.length === 0;
	const names = new Set(rowsOf(state.plan, stockAheadSheet).map((row) => wordIn(row.item)));
	offer(
		chooser,
		[...names].map((name) => [name, name]),
	);
	const [soonest] = orderLines(state)
		.filter((line) => line.runsOutOn !== "")
		.sort((a, b) => (a.runsOutOn < b.runsOutOn ? -1 : 1));
	if (isFirst && soonest) chooser.value = soonest.item;
}

function drawing(stock: StockOfItem, step: Spacing, room: number): HTMLElement {
	const { line, arrivals, reserve, weeks } = stock;
	const shown: StockShown = {
		stock: stepped(weeks, step),
		reserve,
		measure: shownWord(line.measure),
		arrivals,
		runsOutOn: line.runsOutOn,
		ending: step === "weeks" ? say`end of the week` : say`last week of the month, its end`,
		name: shownDate,
	};
	return pictureFigure(
		({ stockPicture }) => stockPicture(shown, pictureWidth(room)),
		step === "weeks"
			? say`Usable stock of ${line.item} at the end of each week, against its reserve; the table has the numbers.`
			: say`Usable stock of ${line.item} at the end of each month, against its reserve; the table has the numbers.`,
		stockSentence(stock),
	);
}
