import type { Soak } from "./soak.ts";

/** One thing a person does; false where the page has nothing to do it to. */
export interface Action {
	readonly name: string;
	/** How often it comes, beside the others. */
	readonly weight: number;
	act(soak: Soak): Promise<boolean>;
}
