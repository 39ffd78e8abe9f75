/** The amounts that use may come to, one for each way to it, however fine they are. */
export interface PossibleUses {
	/** The size of a step. */
	readonly size: number;
	/** The smallest amount, in steps, that is enough with at least a chance. */
	readonly enough: (confidence: number) => number;
	/** Each way, with its chance. */
	readonly ways: () => Ways;
}

interface Ways {
	readonly chance: Float64Array;
	readonly steps: (way: number) => number;
}
