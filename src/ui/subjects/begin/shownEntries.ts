import { beginEntries, filledEntries } from "../../../core/edit/begin/beginEntries.ts";
import { type BeginEntry, isAsked } from "../../../core/edit/begin/beginEntry.ts";
import { say } from "../../../core/say.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { shownDefault } from "../../format/shownDefault.ts";

/** An entry as the page shows it. */
export interface ShownEntry extends BeginEntry {
	readonly control: "text" | "date" | "choice" | "proposal";
	/** Stands filled in already: it is none of the ten. */
	readonly isFilled?: boolean;
	/** What holds while nothing is entered, in words; absent where the plan waits for it. */
	readonly blank?: string;
}

const controls: Readonly<Record<string, ShownEntry["control"]>> = {
	plan_start: "date",
	steps: "proposal",
};

function shown(entry: BeginEntry): ShownEntry {
	const control = entry.options ? "choice" : (controls[entry.key] ?? "text");
	return {
		...entry,
		control,
		...(entry.defaultOf ? { blank: shownDefault(entry.defaultOf) } : {}),
		...(control === "date" ? { allowed: () => say`a day of the calendar, typed or picked` } : {}),
	};
}

/** Those that are asked of this unit. */
export function askedEntries(workbook: Workbook): readonly ShownEntry[] {
	return shownEntries.filter((entry) => isAsked(entry, workbook));
}

/** What is filled in already stands after the births it is about. */
const AFTER = "births_per_day";

/** The ten things at most that a first plan needs, in the order in which a unit knows them, and what is filled in already. */
export const shownEntries: readonly ShownEntry[] = beginEntries
	.flatMap((entry) => (entry.key === AFTER ? [entry, ...filledEntries] : [entry]))
	.map((entry) => ({ ...shown(entry), isFilled: filledEntries.includes(entry) }));
