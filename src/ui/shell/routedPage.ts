import type { Page } from "../page.ts";
import { pageOf, planPage } from "../pages.ts";

/** The page that the address names, for example "#births.csv"; the plan where it names none. */
export function routedPage(hash: string): Page {
	return pageOf(hash.replace(/^#/, "")) ?? planPage;
}
