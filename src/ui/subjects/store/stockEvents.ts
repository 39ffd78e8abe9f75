import { Grouped } from "../../../core/grouped.ts";
import { say } from "../../../core/say.ts";
import { dayNumber } from "../../../core/values/date.ts";
import { type LabelPlace, labelPlaces } from "../../format/labelPlaces.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { Arrival, StockAt } from "./stockOfItem.ts";

/** The bars of a picture, and what happens between them. */
export interface StockHappenings {
	readonly stock: readonly StockAt[];
	readonly arrivals: readonly Pick<Arrival, "date" | "quantity">[];
	/** Blank where it does not. */
	readonly runsOutOn: string;
}

/** What stands over a bar, the first that shows it. */
export interface StockEvent extends LabelPlace {
	/** Day of the bar. */
	readonly date: string;
	readonly words: string;
	readonly kind: "arrival" | "run-out";
}

type Event = Pick<StockEvent, "words" | "kind"> & { readonly bar: number };

/**
 * What arrives and when stock runs out, none of it over another's words; what lies beyond the last bar is left out.
 *
 * @param centre of a bar, in px
 * @param most how far words may reach, in px
 */
export function stockEvents(
	shown: StockHappenings,
	centre: (bar: number) => number,
	most: number,
): StockEvent[] {
	// Down from the one there is a line; of the others that touch, those further to the left stand higher.
	const events = [...runOut(shown), ...arrivals(shown).toReversed()];
	const labels = events.map(({ bar, words }) => ({
		at: centre(bar),
		wide: words.length * LETTER_PX,
	}));
	const places = labelPlaces(labels, most);
	return events.map(({ bar, words, kind }, i) => {
		const place = places[i] as LabelPlace;
		return { date: shown.stock[bar]?.date ?? "", words, kind, ...place };
	});
}

/** Of several that one bar shows, all of it and the first day. */
function arrivals(shown: StockHappenings): Event[] {
	const ofBar = new Grouped<number, StockHappenings["arrivals"][number]>();
	for (const arrival of shown.arrivals) ofBar.add(barOf(shown, arrival.date), arrival);
	return shown.stock.flatMap((_, bar) => {
		const some = ofBar.of(bar);
		if (some.length === 0) return [];
		const sum = shownNumber(
			some.reduce((all, { quantity }) => all + quantity, 0),
			0,
		);
		const first = shownDay(some.map(({ date }) => date).sort()[0] ?? "");
		const words = some.length > 1 ? say`+${sum} from ${first}` : `+${sum} ${first}`;
		return [{ bar, words, kind: "arrival" }];
	});
}

function runOut(shown: StockHappenings): Event[] {
	const bar = barOf(shown, shown.runsOutOn);
	return bar < 0
		? []
		: [{ bar, words: `${say`runs out`} ${shownDay(shown.runsOutOn)}`, kind: "run-out" }];
}

/** −1 for a day beyond the last bar, and for none. */
function barOf({ stock }: StockHappenings, date: string): number {
	const day = dayNumber(date) ?? Number.POSITIVE_INFINITY;
	return stock.findIndex((at) => (dayNumber(at.date) ?? 0) >= day);
}
