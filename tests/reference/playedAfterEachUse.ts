import { meanOfBatches, randomNumbers, waitingTime } from "./randomNumbers.ts";

/** A unit that reprocesses each kit as it has been used, played through event by event. */
export interface PlayedQueue {
	readonly kits: number;
	readonly usesPerDay: number;
	/** How the uses of a day spread over 24 hours; they add up to 1. */
	readonly shares: readonly number[];
	readonly people: number;
	/** What is done to a kit, one after the other; a person is needed where not alone. */
	readonly work: readonly { readonly minutes: number; readonly alone: boolean }[];
}

interface Job {
	stage: number;
	at: number;
}

const DAY = 1440;
const BATCHES = 100;

/** Needs that find no kit ready, of 1,000. Kits already begun go on first. */
export function playedAfterEachUse(unit: PlayedQueue, days: number, seed: number) {
	const { kits, work, shares, usesPerDay } = unit;
	const random = randomNumbers(seed);
	const busiest = Math.max(...shares);
	let free = unit.people;
	let away = 0;
	let nextUse = 0;
	/** Kits that wait for a person: begun ones before. */
	const begun: Job[] = [];
	const fresh: Job[] = [];
	const running: Job[] = [];
	const advance = () => {
		do nextUse += waitingTime(random, (usesPerDay * busiest) / 60);
		while (random() * busiest >= (shares[Math.floor((nextUse % DAY) / 60)] as number));
	};
	const start = (job: Job, now: number) => {
		job.at = now + (work[job.stage] as { minutes: number }).minutes;
		running.push(job);
	};
	const takeUp = (now: number) => {
		while (free > 0) {
			const job = begun.shift() ?? fresh.shift();
			if (!job) return;
			free--;
			start(job, now);
		}
	};
	const finish = (job: Job) => {
		const now = job.at;
		running.splice(running.indexOf(job), 1);
		if (!work[job.stage]?.alone) free++;
		job.stage++;
		const next = work[job.stage];
		if (!next) away--;
		else if (next.alone) start(job, now);
		else begun.push(job);
		takeUp(now);
	};
	advance();
	const unmetOf: number[] = [];
	for (let batch = -1; batch < BATCHES; batch++) {
		const until = ((batch + 1) * (days / BATCHES) + 30) * DAY;
		let uses = 0;
		let unmet = 0;
		for (;;) {
			const soonest = running.reduce<Job | undefined>(
				(first, job) => (first && first.at <= job.at ? first : job),
				undefined,
			);
			const now = Math.min(nextUse, soonest?.at ?? Number.POSITIVE_INFINITY);
			if (now > until) break;
			if (soonest && soonest.at <= nextUse) finish(soonest);
			else {
				uses++;
				if (away >= kits) unmet++;
				away++;
				const job = { stage: 0, at: now };
				if (work[0]?.alone) start(job, now);
				else fresh.push(job);
				takeUp(now);
				advance();
			}
		}
		if (batch >= 0) unmetOf.push((1000 * unmet) / uses);
	}
	return meanOfBatches(unmetOf);
}
