import type { Hearth, PlacedBatch } from "./batch.ts";

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
		const pots: number[] = [];
		for (let pot = 0; pot < potFree.length && pots.length < batch.pots; pot++)
			if ((potFree[pot] as number) <= start + NEAR) pots.push(pot);
		const [offBoilAt, coolAt] = [start + batch.stoveMinutes, start + batch.potMinutes];
		stoveFree[stove] = offBoilAt;
		for (const pot of pots) potFree[pot] = coolAt;
		const before = goesOn >= 0 ? fires[burning[stove] as number] : undefined;
		const named = pots.map((pot) => pot + 1);
		const taken = named.map((pot) => ({ pot, from: start, to: coolAt }));
		const fire: Fire = {
			need: batch.need,
			stove: stove + 1,
			pots: before ? [...new Set([...before.pots, ...named])].sort((a, b) => a - b) : named,
			litres: (before?.litres ?? 0) + batch.litres,
			startLitres: (before?.startLitres ?? 0) + batch.startLitres,
			batches: (before?.batches ?? 0) + 1,
			heatMinutes: (before?.heatMinutes ?? 0) + batch.heatMinutes,
			kj: (before?.kj ?? 0) + batch.kj,
			lightAt: before?.lightAt ?? start,
			offBoilAt,
			coolAt,
			taken: before ? [...before.taken, ...taken] : taken,
		};
		if (before) fires[burning[stove] as number] = fire;
		else burning[stove] = fires.push(fire) - 1;
	}
	return fires;
}
