/** How a piece of a kit is made fit for the next baby, in the order in which a round goes through them. */
export const methods = ["chlorine", "boiling", "steam", "autoclave", "single_use"] as const;
export type Method = (typeof methods)[number];

/** Methods that a round does itself, load by load. */
export const loadMethods = ["chlorine", "boiling", "steam"] as const;
export type LoadMethod = (typeof loadMethods)[number];
