import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { daysFrom, type IsoDate } from "../values/date.ts";
import { onHand } from "./onHand.ts";
import type { ProjectedLot } from "./projection.ts";

/** What the list of lots says of one beside its quantity. */
export interface ListedLot {
	readonly lot: string;
	/** null where it is in the store. */
	readonly arrives_on: IsoDate | null;
	/** Last day it may be used; null where none is known. */
	readonly expires_on: IsoDate | null;
}

interface LotInputs {
	readonly onHand: readonly number[];
	readonly listed: readonly ListedLot[];
	readonly firstDay: IsoDate;
}

export const lotsInput = { label: say`Lots`, unit: say`in the item's measure` };

/** The lots of an item as the projection sees them, before any fading. */
export const lotsInStore = calculation<LotInputs, ProjectedLot[]>({
	key: "lots_in_store",
	label: lotsInput.label,
	unit: lotsInput.unit,
	formula: say`What is on hand of each lot, with the days on which it arrives and expires.`,
	source: definition,
	inputs: {
		onHand: { label: onHand.label, unit: lotsInput.unit },
		listed: { label: say`Lots as listed`, unit: "" },
		firstDay: { label: say`First day`, unit: "" },
	},
	example: {
		inputs: {
			onHand: [12],
			listed: [{ lot: "A", arrives_on: "2027-03-03", expires_on: "2027-03-31" }],
			firstDay: "2027-03-01",
		},
		result: [{ name: "A", quantity: 12, from: 2, last: 30, ends: "out of date", perUnit: () => 1 }],
		within: 0,
	},
	compute: ({ onHand: quantities, listed, firstDay }) =>
		listed.map(({ lot, arrives_on: arrives, expires_on: expires }, at) => ({
			name: lot,
			quantity: quantities[at] as number,
			from: arrives ? daysFrom(firstDay, arrives) : 0,
			last: expires ? daysFrom(firstDay, expires) : Number.POSITIVE_INFINITY,
			ends: "out of date",
			perUnit: () => 1,
		})),
});
