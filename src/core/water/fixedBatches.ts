import type { PlacedBatch } from "./batch.ts";

/** Batches that stay at their hour, found by it: of a year of them only the few near another are looked at. */
export class FixedBatches {
	readonly #byStart: PlacedBatch[] = [];
	#longest = 0;

	constructor(batches: readonly PlacedBatch[] = []) {
		for (const each of batches) this.add(each);
	}

	/** Earliest first; of several at once the first that was added. */
	get byStart(): readonly PlacedBatch[] {
		return this.#byStart;
	}

	add(each: PlacedBatch): void {
		this.#byStart.splice(this.#firstAfter(each.start), 0, each);
		this.#longest = Math.max(this.#longest, each.batch.potMinutes);
	}

	/** All that may still be on the fire after a minute and are there before another; some that are not, too. */
	between(after: number, before: number): readonly PlacedBatch[] {
		const from = this.#firstAfter(after - this.#longest);
		return this.#byStart.slice(from, this.#firstAfter(before));
	}

	/** The place of the first that is lit after a minute. */
	#firstAfter(minute: number): number {
		let [low, high] = [0, this.#byStart.length];
		while (low < high) {
			const middle = (low + high) >> 1;
			if ((this.#byStart[middle] as PlacedBatch).start > minute) high = middle;
			else low = middle + 1;
		}
		return low;
	}
}
