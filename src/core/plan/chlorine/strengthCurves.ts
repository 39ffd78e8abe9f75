import { readingRange } from "../../chlorine/readingRange.ts";
import { asLabelled } from "../../chlorine/shownStrength.ts";
import { valueIn } from "../../outcome.ts";
import { addDays, daysFrom, type IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import type { LotFigures } from "./lotFigures.ts";
import type { StoreLots } from "./storeLots.ts";
import { bornOn } from "./strengthOfLot.ts";

/** How far the coming months are followed, and how far back for a reading taken before the plan. */
const DAYS_AHEAD = 365;
const DAYS_BACK = 92;
const STEP_DAYS = 7;

/** Strengths are as a label states them: % of a liquid or powder, grams in a tablet. */
export interface StrengthCurve {
	readonly product: string;
	readonly lot: string;
	readonly form: "liquid" | "powder" | "tablet";
	readonly labelled: number;
	/** The least with which the strength wanted can be made; undefined for tablets, which are counted. */
	readonly wanted: number | undefined;
	/** From the first day, or its arrival, to its last usable day or the horizon; none where it is not usable. */
	readonly points: readonly { readonly day: IsoDate; readonly strength: number }[];
	/** undefined: not usable on the first day; null: no end in sight. */
	readonly lastUsableDay: IsoDate | null | undefined;
	/** What ends it. */
	readonly endsBy: "expiry" | "strength" | undefined;
	/** Readings with the range that they still agree with. */
	readonly readings: readonly {
		readonly day: IsoDate;
		readonly strength: number;
		readonly low: number;
		readonly high: number;
	}[];
}

/** The strength of every chlorine lot over the coming months; lots whose label cannot be read are left out. */
export function strengthCurves(store: StoreLots): StrengthCurve[] {
	return store.lots.flatMap((lot) => {
		const label = valueIn(lot.product.strength);
		if (!label) return [];
		const { item, lot: name, expires_on } = lot.lot.value;
		const readings = readingsOf(store, item, name);
		const last = lot.lastUsableDay;
		return {
			product: item,
			lot: name,
			form: label.form,
			labelled: asLabelled(label),
			wanted: label.form === "tablet" ? undefined : store.targetPct,
			points: pointsOf(store, lot, readings[0]?.day),
			lastUsableDay: last,
			endsBy: last == null ? undefined : last === expires_on ? "expiry" : "strength",
			readings,
		};
	});
}

/** Readings within the months that are shown, oldest first. */
function readingsOf({ firstDay, readings }: StoreLots, item: string, lot: string) {
	return readings
		.filter((reading) => reading.item === item && reading.lot === lot)
		.filter(({ read_on }) => read_on >= addDays(firstDay, -DAYS_BACK))
		.filter(({ read_on }) => read_on <= addDays(firstDay, DAYS_AHEAD))
		.sort((a, b) => inOrder(a.read_on, b.read_on) || inOrder(b.strength_pct, a.strength_pct))
		.map(({ read_on: day, strength_pct: strength, method }) => ({
			day,
			strength,
			...readingRange(strength, method),
		}));
}

function pointsOf({ firstDay }: StoreLots, lot: LotFigures, firstReading: IsoDate | undefined) {
	const { lastUsableDay: last, strengthOn } = lot;
	if (last === undefined) return [];
	const horizon = addDays(firstDay, DAYS_AHEAD);
	const end = last === null || last > horizon ? horizon : last;
	const start = startOf(lot, firstDay, firstReading);
	const length = daysFrom(start, end);
	const steps = Array.from({ length: Math.ceil(Math.max(0, length) / STEP_DAYS) }, (_, step) =>
		addDays(start, step * STEP_DAYS),
	);
	const days = [...new Set([...steps, ...(start < firstDay ? [firstDay] : []), end])].sort();
	return days.flatMap((day) => {
		const strength = valueIn(strengthOn(day));
		return strength ? [{ day, strength: asLabelled(strength) }] : [];
	});
}

/** The first day, earlier for a reading taken before it, later for a lot on its way. */
function startOf(
	{ lot, arrivesOn }: LotFigures,
	firstDay: IsoDate,
	firstReading: IsoDate | undefined,
): IsoDate {
	if (arrivesOn !== null && arrivesOn > firstDay) return arrivesOn;
	if (firstReading === undefined || firstReading >= firstDay) return firstDay;
	const born = bornOn(lot.value) ?? firstReading;
	return born > firstReading ? born : firstReading;
}
