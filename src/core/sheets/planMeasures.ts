import { say } from "../say.ts";

/** A column of day-plan.csv for one measure: what is expected of it, or what to set aside. */
export interface MeasureColumn {
	readonly label: string;
	readonly help: string;
	/** Decimals on screen and paper; what to set aside is rounded up to them. */
	readonly decimals: number;
	/** Where it is not the measure's own. */
	readonly unit?: string;
}

/**
 * One measure of the plan: what a day, and the whole period, is expected to bring, and
 * what to set aside for it. Columns of day-plan.csv, rows of week-total.csv, the plan as
 * people read it and the comparison of two sides follow from this list.
 */
export interface PlanMeasure {
	/** Within a sentence, for the key that files keep. */
	readonly word: string;
	/** "" where the product in use says it. */
	readonly unit: string;
	/** The unit of a single one, where that is another word. */
	readonly one?: string;
	/** Begins the keys of its columns, where that is not its own key. */
	readonly stem?: string;
	/** Absent where day-plan.csv does not show it. */
	readonly expected?: MeasureColumn;
	readonly setAside?: MeasureColumn;
	/** Its row in the plan as people read it; measures of one kind of work stand together. */
	readonly row?: {
		readonly group: string;
		readonly label: string;
		/** Shown large; the other figure stands small beneath. */
		readonly large: "expected" | "setAside";
	};
}

export type PlanMeasures = Readonly<Record<string, PlanMeasure>>;

const asPlanned = say`As many as the plan is made for.`;

/** In the order of the work, in three parts: other columns of day-plan.csv stand between them. */
export const kitMeasures = {
	births: {
		word: say`births`,
		unit: say`births`,
		one: say`birth`,
		expected: { label: say`Births, average`, help: say`Mean number of births.`, decimals: 1 },
		setAside: { label: say`Births, prepare for`, help: asPlanned, decimals: 0 },
		row: { group: "births", label: say`Births`, large: "expected" },
	},
	kits_used: {
		word: say`kits used`,
		unit: say`kits`,
		one: say`kit`,
		expected: { label: say`Kits used, average`, help: say`Kits used on a baby.`, decimals: 1 },
	},
	kits_expired: {
		word: say`kits gone out of date`,
		unit: say`kits`,
		one: say`kit`,
		expected: {
			label: say`Kits gone out of date, average`,
			help: say`Ready kits that were not used in time.`,
			decimals: 1,
		},
	},
	kits_to_reprocess: {
		word: say`kits to reprocess`,
		unit: say`kits`,
		one: say`kit`,
		expected: {
			label: say`Kits to reprocess, average`,
			help: say`Used and out of date together.`,
			decimals: 1,
		},
		setAside: { label: say`Kits to reprocess, prepare for`, help: asPlanned, decimals: 0 },
		row: { group: "kits", label: say`Kits to reprocess`, large: "setAside" },
	},
} as const satisfies PlanMeasures;

export const solutionMeasures = {
	rounds: {
		word: say`rounds`,
		unit: say`rounds`,
		one: say`round`,
		expected: {
			label: say`Rounds that run, average`,
			help: say`Rounds with at least one kit.`,
			decimals: 1,
		},
		setAside: { label: say`Rounds that run, prepare for`, help: asPlanned, decimals: 0 },
		row: { group: "rounds", label: say`Rounds that run`, large: "setAside" },
	},
	solution_litres: {
		word: say`solution`,
		unit: "L",
		expected: { label: say`Solution, average`, help: say`Chlorine solution to mix.`, decimals: 1 },
		setAside: {
			label: say`Solution, prepare for`,
			help: say`Chlorine solution to be ready to mix.`,
			decimals: 1,
		},
		row: { group: "solution", label: say`Chlorine solution`, large: "setAside" },
	},
} as const satisfies PlanMeasures;

export const supplyMeasures = {
	chlorine: {
		word: say`chlorine`,
		unit: "",
		stem: "chlorine_quantity",
		setAside: {
			label: say`Product, prepare for`,
			unit: say`mL, g or tablets`,
			help: say`Product to have at hand, as it is measured out.`,
			decimals: 0,
		},
		row: { group: "product", label: say`Product`, large: "setAside" },
	},
	boiled_litres: {
		word: say`boiled water`,
		unit: "L",
		expected: {
			label: say`Boiled water, average`,
			help: say`For the rinse buckets, and to boil or steam pieces in.`,
			decimals: 1,
		},
		setAside: {
			label: say`Boiled water, prepare for`,
			help: say`To have cooled in time.`,
			decimals: 1,
		},
		row: { group: "boiled water", label: say`Boiled water`, large: "setAside" },
	},
	boiled_buckets: {
		word: say`rinse buckets`,
		unit: say`buckets`,
		one: say`bucket`,
		setAside: {
			label: say`Boiled water, prepare for`,
			help: say`Rinse buckets to fill.`,
			decimals: 0,
		},
		row: { group: "boiled water", label: say`Rinse buckets`, large: "setAside" },
	},
	vinegar_litres: {
		word: say`vinegar`,
		unit: "L",
		expected: { label: say`Vinegar, average`, help: say`For descaling baths.`, decimals: 1 },
		setAside: { label: say`Vinegar, prepare for`, help: say`To have at hand.`, decimals: 1 },
		row: { group: "vinegar", label: say`Vinegar`, large: "setAside" },
	},
	gauze_pieces: {
		word: say`gauze`,
		unit: say`pieces`,
		one: say`piece`,
		expected: {
			label: say`Gauze, average`,
			help: say`All items of the group gauze.`,
			decimals: 1,
		},
		setAside: {
			label: say`Gauze, prepare for`,
			help: say`All items of the group gauze.`,
			decimals: 0,
		},
		row: { group: "gauze", label: say`Gauze`, large: "setAside" },
	},
} as const satisfies PlanMeasures;

const all = { ...kitMeasures, ...solutionMeasures, ...supplyMeasures };

export type Measure = keyof typeof all;
export const planMeasures: Readonly<Record<Measure, PlanMeasure>> = all;
export const measures = Object.keys(all) as readonly Measure[];
