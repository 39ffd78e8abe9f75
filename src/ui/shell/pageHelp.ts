import { say } from "../../core/say.ts";
import { BEGIN } from "./pageTitles.ts";

/** What each page that is no sheet is for, in a sentence or two: on the page itself and in the guide. */
export const pageHelp: Readonly<Record<string, string>> = {
	[BEGIN]: say`Ten entries make a first plan. Each is written into its ordinary sheet, where it can be seen and changed; Enter goes on to the next, Undo takes one back.`,
	"what-if": say`Keep a copy of the settings and rounds under a name, change some of them, and see side by side what follows from each. Copies live in the workbook and are saved with it.`,
	labels: say`Labels for the vessel of solution, the rinse buckets and the kits, six to a sheet of A4 or Letter, to cut out. What is known is printed, the rest is left to write in. Every mixed solution carries a label from the moment it is made.`,
	"kit-history": say`One kit: how it stands, until when it may be used, and every check it went through with what the check said. Blank check sheets to hang by the bench are printed from here; what is written on them is typed in under Readiness checks.`,
};
