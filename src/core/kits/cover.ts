import { calculation } from "../calculation.ts";
import { refuse } from "../refusal.ts";
import { flatDay } from "../rounds/dayClock.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { fewestEnough, firstEnough } from "./fewestEnough.ts";
import type { Reprocessing } from "./reprocessing.ts";
import { keepsUp, leastUnmetPer1000, unmetPer1000, unmetWithMore } from "./unmetPer1000.ts";

/** How many kits are needed, why, and what each number of kits would mean. */
export interface Cover {
	readonly kitsNeeded: number;
	/** Smallest number that keeps unmet needs below the limit. */
	readonly byRisk: number;
	/** One for each delivery bed, and the spares. */
	readonly byBeds: number;
	readonly decidedBy: "risk" | "beds";
}

interface Inputs {
	readonly reprocessing: Reprocessing;
	readonly unmetAllowed: number;
	readonly deliveryBeds: number;
	readonly spareKits: number;
}

/** A unit that would need more kits than this has some figure wrong. */
const MOST_KITS = 500;

/** 0.6 uses a day, each kit 110 minutes in the hands of somebody who is always there. */
export const oneByOne: Reprocessing = {
	kind: "after_each_use",
	usesPerDay: [0.6],
	hourShares: flatDay,
	hands: { people: Number.POSITIVE_INFINITY, workMinutes: 110, aloneMinutes: 0 },
	readyLifeDays: null,
};

/** After each use, 0.6 uses a day, 110 minutes: chances of a Poisson count of mean 0.6 × 110 ÷ 1440. */
const example: Cover = {
	kitsNeeded: 3,
	byRisk: 3,
	byBeds: 3,
	decidedBy: "risk",
};

/** Kits needed so that one is ready (the base stock): the larger of two rules. Where both ask for the same, risk is named. */
export const kitCover = calculation<Inputs, Cover>({
	key: "kit_cover",
	label: say`How many kits are enough`,
	unit: say`kits`,
	formula: say`The larger of: the smallest number of kits with which no kit is ready when needed at most as many of 1\u202f000 times as allowed; and delivery beds plus spare kits.`,
	source: sources.palm,
	inputs: {
		reprocessing: { label: say`When used kits come back`, unit: "" },
		unmetAllowed: {
			label: say`Times no kit may be ready when needed, at most`,
			unit: say`per 1\u202f000 uses`,
			min: 1e-6,
		},
		deliveryBeds: { label: say`Delivery beds`, unit: say`beds`, min: 0 },
		spareKits: { label: say`Spare kits`, unit: say`kits`, min: 0 },
	},
	example: {
		inputs: {
			reprocessing: oneByOne,
			unmetAllowed: 1,
			deliveryBeds: 2,
			spareKits: 1,
		},
		result: example,
		within: 1e-5,
	},
	compute: ({ reprocessing, unmetAllowed, deliveryBeds, spareKits }) => {
		const tooMany = refuse({
			code: "too-many-kits",
			received: say`more than ${MOST_KITS} kits`,
			allowed: say`at most ${MOST_KITS} kits`,
			message: say`More than ${MOST_KITS} kits would be needed; look at births, kits used per 100 births, the minutes of a round and the days a kit stays ready.`,
		});
		if (!keepsUp(reprocessing)) return tooMany;
		const least = fewestEnough(MOST_KITS, unmetAllowed, (kits) =>
			leastUnmetPer1000(kits, reprocessing, unmetAllowed),
		);
		const byRisk = firstEnough(
			least,
			MOST_KITS,
			(kits) =>
				unmetWithMore(kits, reprocessing) <= unmetAllowed &&
				unmetPer1000(kits, reprocessing, unmetAllowed) <= unmetAllowed,
		);
		if (byRisk > MOST_KITS) return tooMany;
		const byBeds = deliveryBeds + spareKits;
		const kitsNeeded = Math.max(byRisk, byBeds);
		const decidedBy = byRisk >= byBeds ? "risk" : "beds";
		return { kitsNeeded, byRisk, byBeds, decidedBy };
	},
});

/** The number of kits the unit must own. */
export const kitsNeeded = calculation<{ cover: Cover }, number>({
	key: "kits_needed",
	label: say`Kits needed`,
	unit: say`kits`,
	formula: say`The number that is enough both for the times no kit is ready when needed and for the delivery beds.`,
	source: sources.palm,
	rounding: say`A whole number of kits, never rounded down.`,
	caution: say.safety`A baby cannot wait. A kit in repair or incomplete is not a kit in service.`,
	inputs: { cover: { label: say`How many kits are enough`, unit: say`kits` } },
	example: { inputs: { cover: example }, result: 3, within: 0 },
	compute: ({ cover }) => cover.kitsNeeded,
});
