/** How likely each amount is that may come, counted in steps of one size. */
export interface Amounts {
	/**
	 * `chance[i]` is the probability of `first + i` steps; of `places[i]`, in any order and parts of a step
	 * too, where amounts are too fine to list those that cannot come.
	 */
	readonly counts: {
		readonly first: number;
		readonly chance: Float64Array;
		readonly places?: Float64Array;
		/** What comes beyond the last of `chance`, where that was not followed: asked for by hardly anybody. */
		readonly beyond?: () => { readonly first: number; readonly chance: Float64Array };
	};
	readonly size: number;
}

/** The same in larger or smaller things. @example loads as litres, at 30 L a load */
export function scaled({ counts, size }: Amounts, by: number): Amounts {
	return { counts, size: size * by };
}
