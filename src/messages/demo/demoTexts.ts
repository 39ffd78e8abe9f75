/**
 * Where the demo has texts that people read, by kind. Marks, names of people, codes and
 * numbers are the same in every language and stand in no line here.
 */
export const demoTexts: Readonly<Record<string, readonly string[]>> = {
	unit: ["unit.csv: value"],
	births: ["births.csv: note"],
	rounds: ["rounds.csv: label"],
	steps: ["steps.csv: step"],
	items: [
		"items.csv: item",
		"chlorine.csv: product",
		"lots.csv: item",
		"usage.csv: item",
		"placed.csv: item",
		"rounds-done.csv: product",
	],
	kinds: ["kinds.csv: kind", "kits.csv: kind"],
	pieces: ["kinds.csv: piece"],
	kits: ["kits.csv: note"],
	usage: ["usage.csv: note"],
	uses: ["uses.csv: note"],
	checks: ["checks.csv: note"],
	roundsDone: ["rounds-done.csv: note"],
	placed: ["placed.csv: note"],
};

/** The settings that are such texts; in the column of values all others are numbers and codes. */
export const demoSettings: readonly string[] = ["unit_name", "currency"];
