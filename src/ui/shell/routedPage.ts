import type { Page } from "../page.ts";
import { firstPage, pageOf, planPage } from "../pages.ts";

/** The page that the address names, for example "#births.csv"; today where it names none; the plan where there is no such page. */
export function routedPage(hash: string): Page {
	const file = hash.replace(/^#/, "");
	return file === "" ? firstPage : (pageOf(file) ?? planPage);
}
