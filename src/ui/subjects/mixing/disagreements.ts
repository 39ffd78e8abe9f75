import { GRAMS_PER_LITRE_PER_DEGREE } from "../../../core/chlorine/availableChlorine.ts";
import { fixed } from "../../../core/fixed.ts";
import { say } from "../../../core/say.ts";
import { chlorineSheet } from "../../../core/sheets/chlorine.ts";
import { itemsSheet } from "../../../core/sheets/items.ts";
import type { SettingKey } from "../../../core/sheets/settings.ts";
import { stepsSheet } from "../../../core/sheets/steps.ts";
import { treatmentsSheet } from "../../../core/sheets/treatments.ts";
import type { Source } from "../../../core/source.ts";
import { sources } from "../../../core/sources.ts";

/** The sources that say of themselves that others differ. */
type Disagreeing = {
	[K in keyof typeof sources]: (typeof sources)[K] extends { disagreement: string } ? K : never;
}[keyof typeof sources];

/** Something on which sources disagree, and what of this unit it decides. */
export interface Topic {
	readonly topic: string;
	readonly settings: readonly SettingKey[];
	/** What the plan does where no setting of the unit decides it. */
	readonly here?: string;
	/** Sheet on which the unit decides it, where that is not a setting. */
	readonly file?: string;
}

/** Every disagreement, in the order of the work. A source that disagrees and has no topic does not compile. */
const topics: Readonly<Record<Disagreeing, Topic>> = {
	kitShare: { topic: say`How many newborns need a kit`, settings: ["kits_used_per_100_births"] },
	weekdays: {
		topic: say`How much weekdays differ in births`,
		settings: ["births_from_register"],
		here: say`The plan learns it from the unit's own days.`,
	},
	readyLife: { topic: say`How long a disinfected kit stays ready`, settings: ["ready_life_days"] },
	methods: {
		topic: say`By what method pieces are disinfected`,
		settings: ["method"],
		here: say`Pieces that go another way have their own lines.`,
		file: treatmentsSheet.file,
	},
	steamDamage: {
		topic: say`Whether steam harms the pieces`,
		settings: ["method"],
		here: say`A method that a maker forbids for a piece belongs under how pieces are treated.`,
		file: treatmentsSheet.file,
	},
	cleanFirst: {
		topic: say`Cleaning first, or soaking first`,
		settings: [],
		here: say`The proposed steps clean first; the unit's own order is the order of its steps.`,
		file: stepsSheet.file,
	},
	drying: {
		topic: say`Drying with gauze, or in the air`,
		settings: [],
		here: say`The proposed steps do both; the unit's own are its steps, and its gauze what is used up.`,
		file: stepsSheet.file,
	},
	boilPieces: { topic: say`How long to boil pieces`, settings: ["disinfect_boil_minutes"] },
	steamPieces: { topic: say`How long to steam pieces`, settings: ["steam_minutes"] },
	sterileLife: {
		topic: say`How long a sterilised kit stays ready`,
		settings: ["sterile_life_days"],
	},
	soakStrength: { topic: say`How strong the soak must be`, settings: ["target_strength_pct"] },
	soakMinutes: { topic: say`How long to soak`, settings: ["soak_minutes"] },
	solutionLife: {
		topic: say`How long a mixed solution may be used`,
		settings: ["solution_life_hours", "solution_made"],
	},
	madeUpTo: {
		topic: say`Parts of product per litre: made up to, or added to`,
		settings: [],
		here: say`The plan always makes up to the full litres, so the product is part of them.`,
	},
	chlorometric: {
		topic: say`What a chlorometric degree is in per cent`,
		settings: [],
		here: say`The plan takes ${fixed(GRAMS_PER_LITRE_PER_DEGREE, 2)} g of available chlorine a litre for each degree.`,
		file: chlorineSheet.file,
	},
	fading: {
		topic: say`How fast liquid bleach loses strength in a warm store`,
		settings: ["store_c"],
		here: say`How many times faster than in the laboratory a product loses strength stands for each product under “Chlorine products”.`,
		file: chlorineSheet.file,
	},
	powderLoss: {
		topic: say`How fast a powder loses strength`,
		settings: [],
		here: say`How much a powder loses a year stands for each product under “Chlorine products”.`,
		file: chlorineSheet.file,
	},
	settling: { topic: say`How long a powder settles`, settings: ["settle_minutes"] },
	boilHold: { topic: say`How long to keep water at the boil`, settings: ["boil_hold_minutes"] },
	cooling: { topic: say`How fast a covered pot cools`, settings: ["cooling_per_hour"] },
	stoves: {
		topic: say`How much of the fuel's heat reaches the pot`,
		settings: ["fuel", "stove_efficiency"],
	},
	descaling: {
		topic: say`How long, and in what mixture, to descale`,
		settings: ["descale_minutes", "descale_acid_pct"],
	},
	periodicReview: {
		topic: say`How much to keep in the store for safety`,
		settings: ["review_days"],
		here: say`The plan sets it by the chance of lasting, for each item.`,
		file: itemsSheet.file,
	},
};

/** The topics with their sources. */
export function disagreements(): readonly (Topic & { readonly source: Source })[] {
	return Object.entries(topics).map(([key, topic]) => ({
		...topic,
		source: sources[key as Disagreeing],
	}));
}
