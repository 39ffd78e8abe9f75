import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";

/** What must be there for a button to be of use. */
export type Needs = "nothing" | "reading" | "units" | "waiting" | "order";

/** What the page does with a district; each has a button. */
type Act =
	| "files"
	| "folder"
	| "readOn"
	| "showRead"
	| "save"
	| "saveAll"
	| "printOrder"
	| "printShares"
	| "printUnits"
	| "startAgain";

const buttons: readonly (readonly [act: Act, needs: Needs, words: string])[] = [
	["files", "nothing", say`Choose files`],
	["folder", "nothing", say`Choose a folder`],
	["readOn", "waiting", say`Read on`],
	["showRead", "reading", say`Show those read so far`],
	["save", "order", say`Save the order (CSV)`],
	["saveAll", "order", say`Save all lists (zip)`],
	["printOrder", "order", say`Print the order`],
	["printShares", "order", say`Print with each unit's share`],
	["printUnits", "units", say`Print the units`],
	["startAgain", "units", say`Start again`],
];

/** Those that are not shown where they are of no use: they would only be asked about. */
const PASSING: readonly Needs[] = ["waiting", "reading"];

/** The buttons over a district. */
export function districtButtons(acts: Readonly<Record<Act, () => void>>) {
	const made = buttons.map(([act, needs, words]) => ({
		needs,
		element: el(
			"button",
			{ type: "button", class: act === "files" ? "main" : undefined, onclick: acts[act] },
			words,
		),
	}));
	return {
		element: el("div", { class: "tools district-tools" }, ...made.map(({ element }) => element)),
		enable(has: Readonly<Record<Needs, boolean>>): void {
			for (const { element, needs } of made) {
				element.disabled = !has[needs];
				element.hidden = PASSING.includes(needs) && !has[needs];
			}
		},
	};
}
