import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { type ProjectedLot, shortFrom } from "./projection.ts";
import { dailyWithWastage } from "./withWastage.ts";

/** Days looked at one after the other; of a larger order several packs are taken at a time. */
export const MOST_STEPS = 2000;

/** Days an item runs out on, by how many packs of it come. */
export interface RunsOut {
	/** Packs from one of the days to the next. */
	readonly each: number;
	/** With no pack, with so many more at a time, and last with the whole order; days from the first, null where it lasts. */
	readonly days: readonly (number | null)[];
}

/** The day an item runs out on with some of its order, which in between is never said to be later than it is. */
export function dayWith({ each, days }: RunsOut, packs: number, ordered: number): number | null {
	const at = packs >= ordered ? days.length - 1 : Math.floor(packs / each);
	return days[at] as number | null;
}

interface Inputs {
	readonly lots: readonly ProjectedLot[];
	readonly delivered: readonly ProjectedLot[];
	readonly demand: readonly number[];
	readonly packs: number;
	readonly packSize: number;
}

const exampleLot: ProjectedLot = {
	name: "A",
	quantity: 6,
	from: 0,
	last: Number.POSITIVE_INFINITY,
	ends: "out of date",
	perUnit: () => 1,
};

export const runsOutWith = calculation<Inputs, RunsOut>({
	key: "runs_out_with",
	label: say`Runs out with so many packs of the order`,
	unit: say`days from the first`,
	formula: say`For none, one, two and more packs: the first day, from the delivery of an order of today on, whose average use, wastage included, is more than what is usable. What is short before it comes, no pack can help.`,
	source: sources.firstExpiredFirstOut,
	inputs: {
		lots: { label: say`Lots`, unit: say`in the item's measure` },
		delivered: {
			label: say`What the order brings, pack by pack`,
			unit: say`in the item's measure`,
		},
		demand: { label: dailyWithWastage.label, unit: dailyWithWastage.unit },
		packs: { label: say`Packs to order`, unit: say`packs`, min: 0 },
		packSize: { label: say`Pack size`, unit: say`in the item's measure`, min: 1e-9 },
	},
	example: {
		// Six are here and two go each day; packs of four come on the third.
		inputs: {
			lots: [exampleLot],
			delivered: [{ ...exampleLot, name: "B", quantity: 4, from: 2 }],
			demand: [2, 2, 2, 2, 2, 2],
			packs: 2,
			packSize: 4,
		},
		result: { each: 1, days: [3, 5, null] },
		within: 0,
	},
	compute: ({ lots, delivered: [brought], demand, packs, packSize }) => {
		const each = Math.max(1, Math.ceil(packs / MOST_STEPS));
		const known = lots.map(byDay);
		const order = byDay(brought as ProjectedLot);
		const days = notFalling(Math.ceil(packs / each) + 1, (step) => {
			const quantity = Math.min(packs, step * each) * packSize;
			return shortFrom(order.from, [...known, { ...order, quantity }], demand);
		});
		return { each, days };
	},
});

/**
 * Days of one number of packs after the other. With more packs it never runs out sooner, so
 * between two numbers that run out on one day all do.
 */
function notFalling(count: number, dayOf: (step: number) => number | null): (number | null)[] {
	const days = new Array<number | null>(count).fill(null);
	const fill = (from: number, to: number) => {
		const middle = (from + to) >> 1;
		if (days[from] === days[to]) days.fill(days[from] as number | null, from, to);
		else if (middle > from) {
			days[middle] = dayOf(middle);
			fill(from, middle);
			fill(middle, to);
		}
	};
	days[0] = dayOf(0);
	days[count - 1] = dayOf(count - 1);
	fill(0, count - 1);
	return days;
}

/** How strong a lot is on a day is asked once, however many packs are tried. */
function byDay(lot: ProjectedLot): ProjectedLot {
	const known = new Map<number, number>();
	return {
		...lot,
		perUnit: (day) => {
			const before = known.get(day);
			if (before !== undefined) return before;
			const now = lot.perUnit(day);
			known.set(day, now);
			return now;
		},
	};
}
