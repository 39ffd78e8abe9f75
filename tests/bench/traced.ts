import type { Browser, Page } from "playwright-core";

/** A task of the page's own thread. */
export interface Task {
	/** By the clock of the browser. */
	readonly startMs: number;
	/** By the clock, as a person waits. */
	readonly ms: number;
	/** What the processor gave to it; another program's share is not in it. */
	readonly cpuMs: number;
}

export interface Traced {
	readonly tasks: readonly Task[];
	/** When the page last marked what, by the clock of the browser, in ms. */
	readonly marks: Readonly<Record<string, number>>;
}

interface TraceEvent {
	readonly name: string;
	readonly cat: string;
	readonly ph: string;
	readonly pid: number;
	readonly tid: number;
	readonly ts: number;
	readonly dur?: number;
	readonly tdur?: number;
	readonly args?: { readonly name?: string };
}

/** What the page's thread did while something went on, and what it marked meanwhile. */
export async function traced(
	browser: Browser,
	page: Page,
	work: () => Promise<void>,
): Promise<Traced> {
	const categories = ["toplevel", "blink.user_timing", "__metadata"];
	await browser.startTracing(page, { categories });
	await work();
	const trace = JSON.parse((await browser.stopTracing()).toString("utf8")) as {
		readonly traceEvents: readonly TraceEvent[];
	};
	const events = trace.traceEvents;
	const tasks = events.filter(({ name, ph }) => ph === "X" && name.includes("RunTask"));
	const busiest = mainThread(events, tasks);
	const own = tasks.filter((event) => threadOf(event) === busiest);
	if (own.length === 0) throw new Error("the trace names no task of the page");
	const marked = events.filter(({ cat }) => cat === "blink.user_timing");
	return {
		tasks: own.map(({ ts, dur = 0, tdur = 0 }) => ({
			startMs: ts / 1000,
			ms: dur / 1000,
			cpuMs: tdur / 1000,
		})),
		marks: Object.fromEntries(marked.map(({ name, ts }) => [name, ts / 1000])),
	};
}

function threadOf({ pid, tid }: TraceEvent): string {
	return `${pid} ${tid}`;
}

/** Of the pages' main threads the one that did the most: there are those of other tabs too. */
function mainThread(events: readonly TraceEvent[], tasks: readonly TraceEvent[]): string {
	const done = new Map<string, number>();
	for (const event of events)
		if (event.ph === "M" && event.name === "thread_name" && event.args?.name === "CrRendererMain")
			done.set(threadOf(event), 0);
	for (const event of tasks) {
		const before = done.get(threadOf(event));
		if (before !== undefined) done.set(threadOf(event), before + (event.dur ?? 0));
	}
	return [...done].sort(([, one], [, other]) => other - one)[0]?.[0] ?? "";
}
