import { language } from "../../core/language.ts";
import { say } from "../../core/say.ts";
import { shownPlain } from "./shownNumber.ts";

type Words = (count: string) => string;

/** Which numbers go with the singular: in English only 1, in French everything under 2. */
const plurals = new Intl.PluralRules(language);

/** One and several of each thing that is counted within sentences. */
const things = {
	batch: [(n) => say`${n} batch`, (n) => say`${n} batches`],
	birth: [(n) => say`${n} birth`, (n) => say`${n} births`],
	container: [(n) => say`${n} container`, (n) => say`${n} containers`],
	day: [(n) => say`${n} day`, (n) => say`${n} days`],
	entry: [(n) => say`${n} entry`, (n) => say`${n} entries`],
	file: [(n) => say`${n} file`, (n) => say`${n} files`],
	item: [(n) => say`${n} item`, (n) => say`${n} items`],
	kit: [(n) => say`${n} kit`, (n) => say`${n} kits`],
	line: [(n) => say`${n} line`, (n) => say`${n} lines`],
	lot: [(n) => say`${n} lot`, (n) => say`${n} lots`],
	minute: [(n) => say`${n} minute`, (n) => say`${n} minutes`],
	order: [(n) => say`${n} order`, (n) => say`${n} orders`],
	pack: [(n) => say`${n} pack`, (n) => say`${n} packs`],
	pair: [(n) => say`${n} pair`, (n) => say`${n} pairs`],
	person: [(n) => say`${n} person`, (n) => say`${n} people`],
	piece: [(n) => say`${n} piece`, (n) => say`${n} pieces`],
	problem: [(n) => say`${n} problem`, (n) => say`${n} problems`],
	product: [(n) => say`${n} product`, (n) => say`${n} products`],
	round: [(n) => say`${n} round`, (n) => say`${n} rounds`],
	sheet: [(n) => say`${n} sheet`, (n) => say`${n} sheets`],
	tablet: [(n) => say`${n} tablet`, (n) => say`${n} tablets`],
	unit: [(n) => say`${n} unit`, (n) => say`${n} units`],
	week: [(n) => say`${n} week`, (n) => say`${n} weeks`],
} as const satisfies Record<string, readonly [one: Words, many: Words]>;

/** "1 pack", "12 packs". */
export function counted(count: number, thing: keyof typeof things): string {
	const [one, many] = things[thing];
	return (plurals.select(count) === "one" ? one : many)(shownPlain(count));
}

/** "a, b and 3 more": names for reading, no more of them than fit a line. */
export function listed(names: readonly string[], most = names.length): string {
	const left = names.length - most;
	if (left > 0) return say`${names.slice(0, most).join(", ")} and ${left} more`;
	if (names.length < 2) return names.join("");
	return say`${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
