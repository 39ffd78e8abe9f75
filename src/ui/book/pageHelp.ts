import { say } from "../../core/say.ts";

/** What each page that is no sheet is for, in a sentence or two: on the page itself and in the guide. */
export const pageHelp: Readonly<Record<string, string>> = {
	labels: say`Labels for the vessel of solution, the rinse buckets and the kits, six to a sheet of A4 or Letter, to cut out. What is known is printed, the rest is left to write in. Every mixed solution carries a label from the moment it is made.`,
	"kit-history": say`One kit: how it stands, until when it may be used, and every check it went through with what the check said. Blank check sheets to hang by the bench are printed from here; what is written on them is typed in under Readiness checks.`,
};
