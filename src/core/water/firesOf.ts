import type { Hearth } from "./batch.ts";
import type { PlacedBatch } from "./latestStart.ts";

/** A stove that is lit once: one batch after the other for one round. Minutes after the plan's first midnight. */
export interface Fire {
	/** Which need it is for. */
	readonly need: number;
	/** Numbers from 1. */
	readonly stove: number;
	readonly pots: readonly number[];
	readonly litres: number;
	readonly startLitres: number;
	readonly batches: number;
	readonly heatMinutes: number;
	readonly kj: number;
	readonly lightAt: number;
	/** The end of the last hold. */
	readonly offBoilAt: number;
	/** All of it is cool. */
	readonly coolAt: number;
	/** When each pot is filled, and when its water is cool. */
	readonly taken: readonly PotTaken[];
}

export interface PotTaken {
	readonly pot: number;
	readonly from: number;
	readonly to: number;
}

const NEAR = 1e-6;

/** Each batch with a stove and pots of its own; batches for one round that follow each other on a stove are one fire. */
export function firesOf(placed: readonly PlacedBatch[], hearth: Hearth): Fire[] {
	const stoveFree = new Array<number>(hearth.stoves).fill(Number.NEGATIVE_INFINITY);
	const potFree = new Array<number>(hearth.pots).fill(Number.NEGATIVE_INFINITY);
	/** Which fire burnt last on each stove. */
	const burning = stoveFree.map(() => -1);
	const fires: Fire[] = [];
	for (const { batch, start } of [...placed].sort((a, b) => a.start - b.start)) {
		const goesOn = burning.findIndex((at) => {
			const fire = fires[at];
			return fire?.need === batch.need && Math.abs(fire.offBoilAt - start) < NEAR;
		});
		const stove = goesOn >= 0 ? goesOn : stoveFree.findIndex((free) => free <= start + NEAR);
		const pots = [...potFree.keys()]
			.filter((pot) => (potFree[pot] as number) <= start + NEAR)
			.slice(0, batch.pots);
		const [offBoilAt, coolAt] = [start + batch.stoveMinutes, start + batch.potMinutes];
		stoveFree[stove] = offBoilAt;
		for (const pot of pots) potFree[pot] = coolAt;
		const before = goesOn >= 0 ? fires[burning[stove] as number] : undefined;
		const fire: Fire = {
			need: batch.need,
			stove: stove + 1,
			pots: [...new Set([...(before?.pots ?? []), ...pots.map((pot) => pot + 1)])].sort(
				(a, b) => a - b,
			),
			litres: (before?.litres ?? 0) + batch.litres,
			startLitres: (before?.startLitres ?? 0) + batch.startLitres,
			batches: (before?.batches ?? 0) + 1,
			heatMinutes: (before?.heatMinutes ?? 0) + batch.heatMinutes,
			kj: (before?.kj ?? 0) + batch.kj,
			lightAt: before?.lightAt ?? start,
			offBoilAt,
			coolAt,
			taken: [
				...(before?.taken ?? []),
				...pots.map((pot) => ({ pot: pot + 1, from: start, to: coolAt })),
			],
		};
		if (before) fires[burning[stove] as number] = fire;
		else burning[stove] = fires.push(fire) - 1;
	}
	return fires;
}
