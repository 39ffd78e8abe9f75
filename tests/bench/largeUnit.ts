import { addDays } from "../../src/core/values/date.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { unitWith } from "../core/smallUnit.ts";
import { birthsDraw } from "../reference/draws.ts";
import { randomNumbers } from "../reference/randomNumbers.ts";

/** How much of everything an invented unit has; what is left out is as in the small unit. */
export interface Size {
	readonly items?: number;
	readonly lots?: number;
	readonly journal?: number;
	readonly kits?: number;
	readonly kinds?: number;
	readonly rounds?: number;
	readonly days?: number;
	readonly register?: number;
}

const START = "2027-03-01";
const BASES = ["kit", "round", "day", "load", "piece", "worker_round", "descale"];
const list = (header: string, count: number, line: (i: number) => string) =>
	[header, ...Array.from({ length: count }, (_, i) => line(i))].join("\n");
const two = (number: number) => String(number).padStart(2, "0");

/** A unit that has very many of some things, all invented. */
export function largeUnit(size: Size): Workbook {
	return unitWith(
		{ plan_days: size.days ?? 7, ...(size.rounds && { stoves: STOVES }) },
		{ ...store(size), ...kits(size), ...rounds(size), ...register(size) },
	);
}

function store({ items = 0, lots = items, journal = 0 }: Size): Record<string, string> {
	if (items === 0) return {};
	const listed = list(
		"item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level",
		items,
		(i) =>
			`item ${i},${["gauze", "gloves", "other"][i % 3]},piece,${10 + (i % 90)},${1 + (i % 7)},${7 + (i % 30)},${i % 11},0.9${i % 9}`,
	);
	const expiry = (i: number) => `2027-${two(4 + (i % 9))}-${two(1 + (i % 28))}`;
	return {
		"items.csv": `${listed}\nliquid,other,L,5,3,7,10,0.95`,
		"usage.csv": list(
			"item,basis,quantity,note",
			items,
			(i) => `item ${i},${BASES[i % BASES.length]},${1 + (i % 5)},`,
		),
		"lots.csv": list(
			"item,lot,quantity,made_on,received_on,arrives_on,expires_on",
			lots,
			(i) => `item ${i % items},B${i},${20 + (i % 50)},,2027-01-20,,${expiry(i)}`,
		),
		"journal.csv": list("day,item,lot,entry,quantity", journal, (i) => {
			const lot = i % lots;
			const day = addDays(START, -1 - Math.floor(i / 40));
			return `${day},item ${lot % items},B${lot},${["issue", "receipt", "count"][i % 3]},${1 + (i % 9)}`;
		}),
	};
}

function kits({ kits: count = 0, kinds = 1 }: Size): Record<string, string> {
	if (count === 0) return {};
	return {
		"kinds.csv": list("kind,piece,count", kinds, (k) => `kind ${k},bag,1`),
		"kits.csv": list(
			"kit,kind,status,ready_since,note",
			count,
			(k) => `K${k},kind ${k % kinds},in_service,2027-02-2${k % 9},`,
		),
	};
}

/** As many as can be said, for the water of many rounds. */
const STOVES = 10;
/** Steps with which a round ends within the hour, so that even 24 of them are possible. */
const SHORT = `step,basis,minutes,hands_on,method
prepare,round,2,yes,chlorine
wash and dry,kit,3,yes,
soak,load,20,no,
rinse and store,round,2,yes,`;

function rounds({ rounds: count }: Size): Record<string, string> {
	if (count === undefined) return {};
	const minute = (i: number) => Math.floor((i * 1440) / count);
	const clock = (i: number) => `${two(Math.floor(minute(i) / 60))}:${two(minute(i) % 60)}`;
	return { "rounds.csv": list("start,label", count, (i) => `${clock(i)},`), "steps.csv": SHORT };
}

function register({ register: days }: Size): Record<string, string> {
	if (days === undefined) return {};
	const random = randomNumbers(days);
	return {
		"records.csv": list(
			"date,births,kits_used",
			days,
			(day) => `${addDays(START, day - days)},${birthsDraw(12, 10, random)},`,
		),
	};
}
