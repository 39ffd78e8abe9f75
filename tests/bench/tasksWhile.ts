import type { Browser, Page } from "playwright-core";
import { traced } from "./traced.ts";

/** Every task of the page's own thread, one after the other. */
export interface Tasks {
	/** By the clock, as a person waits. */
	readonly ms: readonly number[];
	/** What the processor gave to it; another program's share is not in it. */
	readonly cpuMs: readonly number[];
}

/** Tasks of less than a millisecond are nobody's delay. */
const LEAST_MS = 1;

/** What the page's thread did while something went on. */
export async function tasksWhile(
	browser: Browser,
	page: Page,
	work: () => Promise<void>,
): Promise<Tasks> {
	const { tasks } = await traced(browser, page, work);
	const long = tasks.filter(({ ms }) => ms > LEAST_MS);
	return { ms: long.map(({ ms }) => ms), cpuMs: long.map(({ cpuMs }) => cpuMs) };
}
