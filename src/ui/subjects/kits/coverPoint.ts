/** One number of kits and how often it is not enough. */
export interface CoverPoint {
	/** Kind of kit; blank where the unit has only one. */
	readonly kind: string;
	readonly kits: number;
	/** Needs that find no kit ready, per 1,000. */
	readonly unmet: number;
}
