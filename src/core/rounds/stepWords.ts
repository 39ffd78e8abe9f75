import { withoutWashingAsides } from "./washingAsides.ts";

/** What every round has, by whatever method: of these a list of steps is asked about where it lacks one. */
export const stepSorts = ["wash", "rinse", "dry"] as const;
export type StepSort = (typeof stepSorts)[number];

type Stems = Readonly<Record<StepSort | "other", readonly string[]>>;

/**
 * Beginnings of words by which a step is known, without accents, by language; they are
 * read, never shown. A list of steps may be in any of them, whatever the page speaks.
 */
export const stepStems = {
	en: {
		wash: ["wash", "clean", "brush", "scrub", "soap"],
		rinse: ["rins"],
		dry: ["dry", "dri", "gauze", "towel"],
		other: ["soak", "boil", "steam", "glove", "mix", "pack", "store"],
	},
	fr: {
		wash: ["lav", "nettoy", "bross", "savon"],
		rinse: ["rinc"],
		dry: ["sech", "gaze"],
		other: ["tremp", "immer", "bouill", "vapeur", "gant", "melang", "emball", "rang"],
	},
	pt: {
		wash: ["lav", "limp", "escov", "sabao", "ensabo"],
		rinse: ["enxagu"],
		dry: ["secar", "secag", "enxug", "gaze"],
		other: ["mergulh", "imer", "ferv", "vapor", "luva", "mistur", "embal", "guard"],
	},
} as const satisfies Readonly<Record<string, Stems>>;

const known = (sort: StepSort | "other") =>
	new RegExp(
		`\\b(${Object.values(stepStems)
			.flatMap((stems) => stems[sort])
			.join("|")})`,
		"i",
	);

const stems = {
	wash: known("wash"),
	rinse: known("rinse"),
	dry: known("dry"),
	other: known("other"),
};

/**
 * What no step of a list is about.
 *
 * A list without any word that is known may be in another language: nothing is said of it
 * then. Hands that are washed, a clean cloth and soap that is rinsed off wash no piece.
 *
 * @example missingSorts(["Wash in soapy water", "Soak", "Dry in the air"]) // ["rinse"]
 */
export function missingSorts(steps: readonly string[]): StepSort[] {
	const words = steps.map((step) => step.normalize("NFD").replace(/\p{Diacritic}/gu, ""));
	const isKnown = words.some((step) => Object.values(stems).some((stem) => stem.test(step)));
	if (!isKnown) return [];
	const washing = words.map(withoutWashingAsides);
	return stepSorts.filter(
		(sort) => !(sort === "wash" ? washing : words).some((step) => stems[sort].test(step)),
	);
}
