import { describe, expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { contentOf } from "../core/contentOf.ts";
import { unitWith } from "../core/smallUnit.ts";
import { expectWithin } from "../expectWithin.ts";
import { meanOfBatches, randomNumbers, waitingTime } from "./randomNumbers.ts";

const PERIODS = 60_000;
/** Chance alone goes further than this about once in 16,000 times. */
const STANDARD_ERRORS = 4;
const DAY = 1440;
const starts = [7, 14, 21].map((hour) => hour * 60);

interface Item {
	readonly perDay: number;
	readonly perRound: number;
	readonly perLoad: number;
	/** For a kit of either kind, pieces and all. */
	readonly perKit: readonly [number, number];
	readonly perDescale: number;
	/** The same as lines of usage.csv; kits have five pieces and two, rounds two people. */
	readonly lines: readonly string[];
}
const LOAD = 3;
const DESCALE_EVERY = 3;
const usesPerDay = [0.36, 0.84] as const;

/** Use of the item over some days, baby by baby and round by round; and rounds that ran. */
function period(item: Item, days: number, random: () => number) {
	const next = usesPerDay.map((perDay) => waitingTime(random, perDay / DAY));
	let clock = 21 * 60 - DAY; // the first round takes what came in since the evening before
	let use = item.perDay * days;
	let ran = 0;
	for (let round = 0; round < days * starts.length; round++) {
		const start = (starts[round % 3] as number) + Math.floor(round / 3) * DAY;
		let kits = 0;
		usesPerDay.forEach((perDay, kind) => {
			for (; (next[kind] as number) <= start - clock; kits++) {
				use += item.perKit[kind] as number;
				next[kind] = (next[kind] as number) + waitingTime(random, perDay / DAY);
			}
			next[kind] = (next[kind] as number) - (start - clock);
		});
		clock = start;
		if (kits === 0) continue;
		use += item.perRound + item.perLoad * Math.ceil(kits / LOAD);
		if (ran % DESCALE_EVERY === 0) use += item.perDescale;
		ran++;
	}
	return { use, ran };
}

function ordered(item: Item, leadDays: number, serviceLevel: number) {
	const made = plan(
		unitWith(
			{
				births_per_day: 6,
				review_days: 5,
				ready_life_days: 90,
				workers_per_round: 2,
				descale_every_rounds: DESCALE_EVERY,
			},
			{
				"kind-use.csv": "kind,uses_per_100_births\nbag set,6\nsuction set,14",
				"kinds.csv":
					"kind,piece,count\nbag set,bag,1\nbag set,valve,2\nbag set,mask,2\nsuction set,bulb,2",
				"kits.csv":
					"kit,kind,status,ready_since,note\nA,bag set,in_service,,\nB,bag set,in_service,,\nC,suction set,in_service,,\nD,suction set,in_service,,",
				"usage.csv": ["item,basis,quantity,note", ...item.lines].join("\n"),
				"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
					x,other,piece,1,,${leadDays},0,${serviceLevel}
					liquid,other,L,5,3,7,10,0.95`,
			},
		),
	);
	const [row = []] = contentOf(made, "order.csv", "use_expected", "target_stock");
	return row as number[];
}

const mixed: Item = {
	perDay: 1,
	perRound: 2 + 2 * 1,
	perLoad: 3,
	perKit: [4 + 5, 4 + 2],
	perDescale: 6,
	lines: [
		"x,day,1,",
		"x,round,2,",
		"x,worker_round,1,",
		"x,load,3,",
		"x,kit,4,",
		"x,piece,1,",
		"x,descale,6,",
	],
};
const pieces: Item = {
	perDay: 0,
	perRound: 0,
	perLoad: 0,
	perKit: [10, 4],
	perDescale: 0,
	lines: ["x,piece,2,"],
};
const rounds: Item = {
	perDay: 0,
	perRound: 1,
	perLoad: 0,
	perKit: [0, 0],
	perDescale: 2,
	lines: ["x,round,1,", "x,descale,2,"],
};

describe("order over lead and review days against babies drawn one by one, two kinds of kit", () => {
	test.each<[string, Item, number, number]>([
		["everything at once", mixed, 9, 0.9],
		["everything at once, surer", mixed, 9, 0.99],
		["by the piece", pieces, 2, 0.8],
		["by the round and the descaling", rounds, 9, 0.95],
	])("%s", (_what, item, leadDays, level) => {
		const random = randomNumbers(leadDays * 1000 + Math.round(level * 100));
		const days = leadDays + 5;
		const drawn = Array.from({ length: PERIODS }, () => period(item, days, random));
		const [expected = 0, target = 0] = ordered(item, leadDays, level);
		// Descalings expected are rounds ÷ rounds between them; what is set aside counts them one by one.
		const uses = drawn.map(
			({ use, ran }) =>
				use + item.perDescale * (ran / DESCALE_EVERY - Math.ceil(ran / DESCALE_EVERY)),
		);
		const { mean, standardError } = meanOfBatches(uses);
		expectWithin(mean, expected, STANDARD_ERRORS * standardError, "pieces");
		const error = STANDARD_ERRORS * Math.sqrt((level * (1 - level)) / PERIODS);
		const enough = drawn.filter(({ use }) => use <= target).length / PERIODS;
		const oneLess = drawn.filter(({ use }) => use < target).length / PERIODS;
		expect(enough).toBeGreaterThanOrEqual(level - error);
		expect(oneLess).toBeLessThan(level + error);
		expect(enough - oneLess).toBeGreaterThan(0); // the target is an amount that does occur
	});
});
