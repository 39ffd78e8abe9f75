import type { Browser, Page } from "playwright-core";

/** Every task of the page's own thread, one after the other. */
export interface Tasks {
	/** By the clock, as a person waits. */
	readonly ms: readonly number[];
	/** What the processor gave to it; another program's share is not in it. */
	readonly cpuMs: readonly number[];
}

interface TraceEvent {
	readonly name: string;
	readonly ph: string;
	readonly pid: number;
	readonly tid: number;
	readonly dur?: number;
	readonly tdur?: number;
	readonly args?: { readonly name?: string };
}

/** Tasks of less than a millisecond are nobody's delay. */
const LEAST_US = 1000;

/** What the page's thread did while something went on. */
export async function tasksWhile(
	browser: Browser,
	page: Page,
	work: () => Promise<void>,
): Promise<Tasks> {
	await browser.startTracing(page, { categories: ["toplevel", "__metadata"] });
	await work();
	const trace = JSON.parse((await browser.stopTracing()).toString("utf8")) as {
		readonly traceEvents: readonly TraceEvent[];
	};
	const events = trace.traceEvents;
	const tasks = events.filter(
		({ name, ph, dur = 0 }) => ph === "X" && name.includes("RunTask") && dur > LEAST_US,
	);
	const busiest = mainThread(events, tasks);
	const own = tasks.filter(({ pid, tid }) => `${pid} ${tid}` === busiest);
	if (own.length === 0) throw new Error("the trace names no task of the page");
	return {
		ms: own.map(({ dur = 0 }) => dur / 1000),
		cpuMs: own.map(({ tdur = 0 }) => tdur / 1000),
	};
}

/** Of the pages' main threads the one that did the most: there are those of other tabs too. */
function mainThread(events: readonly TraceEvent[], tasks: readonly TraceEvent[]): string {
	const done = new Map<string, number>();
	for (const { ph, name, pid, tid, args } of events)
		if (ph === "M" && name === "thread_name" && args?.name === "CrRendererMain")
			done.set(`${pid} ${tid}`, 0);
	for (const { pid, tid, dur = 0 } of tasks) {
		const key = `${pid} ${tid}`;
		const before = done.get(key);
		if (before !== undefined) done.set(key, before + dur);
	}
	return [...done].sort(([, one], [, other]) => other - one)[0]?.[0] ?? "";
}
