/** The amounts that use may come to, however fine they are: one for each way to it, in any order. */
export interface PossibleUses {
	/** The size of a step. */
	readonly size: number;
	/** The smallest amount, in steps, that is enough with at least a chance. */
	readonly enough: (confidence: number) => number;
	/** What each way comes to, in steps, and how likely it is. */
	readonly ways: () => { readonly places: Float64Array; readonly chance: Float64Array };
}
