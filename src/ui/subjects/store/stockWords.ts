import { say } from "../../../core/say.ts";
import { amountOf } from "../../format/amountOf.ts";
import { counted } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { StockOfItem } from "./stockOfItem.ts";

/** How long an item lasts, when its reserve is touched, what arrives: what the picture shows. */
export function stockSentence({ line, weeks, reserve, arrivals }: StockOfItem): string {
	const { item, measure, runsOutOn, packs, orderBy } = line;
	const last = weeks.at(-1)?.date ?? "";
	const below = weeks.find((week) => week.usable < reserve);
	const came = arrivals.map(({ lot, quantity, date }) =>
		lot === undefined
			? say`an order of ${amountOf(quantity, measure)} is counted from ${shownDay(date)}`
			: say`lot ${lot} of ${amountOf(quantity, measure)} is counted from ${shownDay(date)}`,
	);
	const parts = [
		runsOutOn === ""
			? say`Without a further order, ${item} lasts beyond ${shownDay(last)}.`
			: say`Without a further order, ${item} runs out on ${shownDay(runsOutOn)}.`,
		below &&
			runsOutOn !== below.date &&
			say`It falls below the reserve of ${amountOf(reserve, measure, reserve < 10 ? 1 : 0)} in the week to ${shownDay(below.date)}.`,
		came.length > 0 && say`Of what is on the way, ${came.join(semicolon)}.`,
		packs === undefined
			? say`What to order needs a number: ${line.waitsFor}`
			: packs > 0
				? say`Order ${counted(packs, "pack")} today.`
				: orderBy !== "" && say`Nothing to order today; order by ${shownDay(orderBy)}.`,
	];
	return parts.filter(Boolean).join(" ");
}
