import type { Method } from "../methods/method.ts";
import { say } from "../say.ts";
import { isDoneFor, type Loads } from "./loads.ts";
import { mixingSteps, withMixingLast } from "./mixingSteps.ts";
import { stepMinutes } from "./roundMinutes.ts";
import type { Step } from "./step.ts";

/** A step of one round with its place on the clock, in minutes after the midnight the round belongs to. */
export interface TimedStep {
	readonly step: string;
	readonly startsAt: number;
	readonly endsAt: number;
	readonly handsOn: "yes" | "no";
	/** How many kits the step deals with; all of the round's, or those of one load. */
	readonly kits: number;
	/** Which load the step belongs to, from 1; 0 for a step that is not counted by load. */
	readonly load: number;
	/** The method of the load, or of a step that belongs to one; null for all others. */
	readonly method: Method | null;
}

/**
 * When the first rinse begins: after the soak of the first load, which is waited for; with the load where
 * none of its steps is, because the soak is counted otherwise. The end of the round where there is no load.
 */
export function firstRinse(steps: readonly TimedStep[]): number | undefined {
	const load = steps.filter(({ load, method }) => load === 1 && method === "chlorine");
	const soak = load.find(({ handsOn }) => handsOn === "no");
	return soak?.endsAt ?? load[0]?.startsAt ?? steps.at(-1)?.endsAt;
}

/** When the last load has been rinsed; the end of the round where nothing is soaked. */
export function lastRinse(steps: readonly TimedStep[]): number | undefined {
	const rinse = steps.findLast(({ load, method }) => load > 0 && method === "chlorine");
	return (rinse ?? steps.at(-1))?.endsAt;
}

/** How many loads of a method a round makes. */
export function loadsOf(steps: readonly TimedStep[], method: Method): number {
	return Math.max(0, ...steps.map((step) => (step.method === method ? step.load : 0)));
}

export interface PlannedRound {
	/** Minutes after midnight. */
	readonly start: number;
	readonly kits: number;
	readonly workers: number;
	readonly loads: Loads;
	/** Minutes of the vinegar bath and of the rinse after it; null where no descaling is due. */
	readonly descale: { readonly minutes: number; readonly rinseMinutes: number } | null;
	/** How long the solution stands before its clear part is used; 0 where it has no deposit. */
	readonly settleMinutes: number;
}

/** Carries its caution in itself, so that on no list it stands beside the solution without one. */
export const DESCALE_STEP = say.safety`Descale in diluted vinegar, in a vessel of its own, never with chlorine`;
/** Stands between acid and chlorine, and cannot be switched off. */
export const RINSE_STEP = say.safety`Rinse and drain until there is no smell of vinegar; open chlorine only then`;
/** Where nothing else is done while a deposit sinks. */
export const SETTLE_STEP = say.safety`Let the solution settle`;

/** Name of a step in one of the loads of a round; it begins with the step's own name. */
export function inLoad(step: string, load: number, loads: number): string {
	return say`${step} (load ${load} of ${loads})`;
}

/**
 * The steps of a round one after the other.
 *
 * Steps counted by load are gone through once a load, method after method. A descaling comes before the
 * first of them, because that is the soak, and is always followed by the rinse; chlorine
 * is opened only after it. Where no step is counted by load, any of them may be the
 * soak: it comes before all. A solution that must settle is mixed so much earlier, also
 * before the round; after a descaling it is waited for.
 */
export function timedSteps(steps: readonly Step[], round: PlannedRound): TimedStep[] {
	const { descale, settleMinutes } = round;
	const mixing = mixingSteps(steps);
	const timed: TimedStep[] = [];
	let clock = round.start;
	const add = (
		step: string,
		minutes: number,
		handsOn: "yes" | "no",
		kits: number,
		{ load, method }: Pick<TimedStep, "load" | "method"> = { load: 0, method: null },
	) => {
		timed.push({ step, startsAt: clock, endsAt: clock + minutes, handsOn, kits, load, method });
		clock += minutes;
	};
	/** Place of what is mixed last. */
	let mixed = -1;
	const addOnce = (step: Step) => {
		if (step === mixing.at(-1)) mixed = timed.length;
		const settles = settleMinutes > 0 && mixed === timed.length;
		const name = settles
			? say.safety`${step.step}; let it settle, and use only the clear liquid`
			: step.step;
		add(name, stepMinutes(step, round), step.hands_on, round.kits, {
			load: 0,
			method: step.method ?? null,
		});
		if (settles && descale) add(SETTLE_STEP, settleMinutes, "no", round.kits);
	};
	let isDescaled = false;
	const descaleOnce = () => {
		if (isDescaled || descale === null) return;
		isDescaled = true;
		add(DESCALE_STEP, descale.minutes, "no", round.kits);
		add(RINSE_STEP, descale.rinseMinutes, "yes", round.kits);
	};
	const addInTurn = (block: readonly Step[]) => {
		for (const step of block) {
			if (step === mixing[0]) descaleOnce();
			addOnce(step);
		}
	};
	const addByLoad = (block: readonly Step[]) => {
		descaleOnce();
		for (const size of inOrderOf(block, round.loads)) {
			const ofMethod = block.filter((step) => isDoneFor(size, step.method));
			const loads = Math.ceil(round.kits / size.kits);
			for (let load = 1; load <= loads; load++) {
				const kits = Math.min(size.kits, round.kits - (load - 1) * size.kits);
				for (const { step, minutes, hands_on } of ofMethod)
					add(loads > 1 ? inLoad(step, load, loads) : step, minutes, hands_on, kits, {
						load,
						method: size.method,
					});
			}
		}
	};
	if (!steps.some((step) => step.basis === "load")) descaleOnce();
	for (const block of blocks(descale ? withMixingLast(steps) : steps))
		if (block[0]?.basis === "load") addByLoad(block);
		else addInTurn(block);
	return descale || mixed < 0 ? timed : settledInTime(timed, mixed, settleMinutes);
}

/** What is mixed, and all before it, so much earlier that the deposit has sunk when the first load goes in. */
function settledInTime(timed: TimedStep[], mixed: number, settleMinutes: number): TimedStep[] {
	const { endsAt } = timed[mixed] as TimedStep;
	const soaks =
		timed.slice(mixed).find(({ load, method }) => load > 0 && method === "chlorine")?.startsAt ??
		endsAt;
	const late = settleMinutes - (soaks - endsAt);
	if (late <= 0) return timed;
	// Not into the day before: what is left is waited for.
	const earlier = Math.min(late, (timed[0] as TimedStep).startsAt);
	return timed.map((step, at) => movedBy(step, at <= mixed ? -earlier : late - earlier));
}

function movedBy(step: TimedStep, minutes: number): TimedStep {
	return { ...step, startsAt: step.startsAt + minutes, endsAt: step.endsAt + minutes };
}

/** The methods as the steps name them; one that no step names keeps its place. */
function inOrderOf(block: readonly Step[], loads: Loads): Loads {
	const first = (size: Loads[number]) =>
		block.findIndex((step) => step.method && isDoneFor(size, step.method));
	return [...loads].sort((a, b) => first(a) - first(b));
}

/** Runs of steps that are counted by load, and runs of those that are not. */
function blocks(steps: readonly Step[]): Step[][] {
	const runs: Step[][] = [];
	for (const step of steps) {
		const run = runs.at(-1);
		if (run && (run[0]?.basis === "load") === (step.basis === "load")) run.push(step);
		else runs.push([step]);
	}
	return runs;
}
