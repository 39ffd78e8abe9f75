import { calculation } from "../../calculation.ts";
import type { KindInQueue } from "../../kits/otherKinds.ts";
import type { AfterEachUse } from "../../kits/unmetAfterEachUse.ts";
import { sameObject } from "../../memoize.ts";
import { flatDay } from "../../rounds/dayClock.ts";
import { say } from "../../say.ts";
import { definition } from "../../source.ts";
import { sources } from "../../sources.ts";
import { canBeDone, tooFewHands } from "./backAfterEachUse.ts";

const meanOf = (uses: readonly number[]) => uses.reduce((sum, each) => sum + each, 0) / uses.length;

interface KindInputs {
	readonly usesPerDay: readonly number[];
	readonly kitsInService: number;
	readonly readyLifeDays: number;
}

/** What a kind of kit brings to the people who reprocess others too. */
export const kindInQueue = calculation<KindInputs, KindInQueue>({
	key: "kind_in_queue",
	label: say`A kind of kit`,
	unit: "",
	formula: say`Its uses on average over the days, the kits in service and how long they stay ready.`,
	source: definition,
	inputs: {
		usesPerDay: { label: say`Kits used, average`, unit: say`kits/day` },
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		readyLifeDays: { label: say`Days a kit stays ready`, unit: say`days`, min: 0.01 },
	},
	example: {
		inputs: { usesPerDay: [1, 2], kitsInService: 4, readyLifeDays: 7 },
		result: { kits: 4, usesPerDay: 1.5, days: 7 },
		within: 1e-12,
	},
	compute: ({ usesPerDay, kitsInService, readyLifeDays }) => ({
		kits: kitsInService,
		usesPerDay: meanOf(usesPerDay),
		days: readyLifeDays,
	}),
});

interface Inputs {
	readonly reprocessing: AfterEachUse;
	readonly own: KindInQueue;
	readonly others: readonly KindInQueue[];
}

const alone: AfterEachUse = {
	kind: "after_each_use",
	usesPerDay: [3],
	hourShares: flatDay,
	hands: { people: 1, workMinutes: 110, aloneMinutes: 0 },
	readyLifeDays: 7,
};
const ofThree = { kits: 5, usesPerDay: 3, days: 7 };
const ofOne = { kits: 4, usesPerDay: 1, days: 7 };

const among = calculation<Inputs, AfterEachUse>({
	key: "among_other_kinds",
	label: say`When used kits come back`,
	unit: "",
	formula: say`Kits of all kinds wait for the same people, in the order in which they come. Each kit that waits or is worked on is of this kind by its share of all uses. Of kits that went out of date at midnight all kinds are done in turn, and those used after them wait for them. Kits of other kinds count as left alone as long as those of this one.`,
	source: sources.crommelin,
	inputs: {
		reprocessing: { label: say`When used kits come back`, unit: "" },
		own: { label: say`This kind of kit`, unit: "" },
		others: { label: say`Other kinds of kit`, unit: "" },
	},
	example: {
		// 3 of 4 uses.
		inputs: { reprocessing: alone, own: ofThree, others: [ofOne] },
		result: { ...alone, others: { share: 0.75, own: ofThree, kinds: [ofOne] } },
		within: 0,
	},
	compute: ({ reprocessing, own, others }) => {
		const { hands } = reprocessing;
		const all = others.reduce((sum, kind) => sum + kind.usesPerDay, own.usesPerDay);
		if (!canBeDone(hands, all)) return tooFewHands(hands);
		const share = own.usesPerDay === 0 ? 0 : own.usesPerDay / all;
		return { ...reprocessing, others: { share, own, kinds: others } };
	},
});

/** The same where people reprocess kits of several kinds as they come. */
export const amongOtherKinds = sameObject(among, ({ reprocessing, own, others }) => [
	reprocessing,
	JSON.stringify([own, others]),
]);
