import { type Profiler, Session } from "node:inspector";

/** The reading code, and the two libraries it reads with. */
const WATCHED = /\/src\/(core|io|ui)\/|papaparse|fflate/;

/** What the engine itself counts of the code that ran, block by block. */
export class Coverage {
	readonly #session = new Session();
	readonly #edges = new Map<string, Set<number>>();

	constructor() {
		this.#session.connect();
		this.#session.post("Profiler.enable");
		this.#session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });
		this.#scripts();
	}

	/**
	 * The blocks of code that ran since the last look, by where they begin or end.
	 *
	 * The engine joins neighbouring blocks that ran equally often, so one look does not
	 * tell all of them apart; each is asked for from the look on that did.
	 */
	blocks(): Set<string> {
		const found = new Set<string>();
		for (const { scriptId, functions } of this.#scripts())
			for (const { ranges } of functions) {
				const name = `${scriptId}:${ranges[0]?.startOffset}`;
				const edges = this.#edges.get(name) ?? new Set();
				this.#edges.set(name, edges);
				for (const { startOffset, endOffset } of ranges) edges.add(startOffset).add(endOffset);
				for (const edge of edges) if (ranAt(edge, ranges)) found.add(`${name}@${edge}`);
			}
		return found;
	}

	/** How many times any block ran since the last look: work, counted without a clock. */
	work(): number {
		const counts = this.#scripts().flatMap(({ functions }) =>
			functions.flatMap(({ ranges }) => ranges.map(({ count }) => count)),
		);
		return counts.reduce((sum, count) => sum + count, 0);
	}

	stop(): void {
		this.#session.disconnect();
	}

	#scripts(): Profiler.ScriptCoverage[] {
		let found: Profiler.ScriptCoverage[] = [];
		this.#session.post("Profiler.takePreciseCoverage", (error, taken) => {
			if (error) throw error;
			found = taken.result.filter(({ url }) => WATCHED.test(url));
		});
		return found;
	}
}

/** Whether the innermost range around a place ran; ranges come outermost first. */
function ranAt(place: number, ranges: readonly Profiler.CoverageRange[]): boolean {
	const around = ranges.findLast((one) => one.startOffset <= place && place < one.endOffset);
	return (around?.count ?? 0) > 0;
}
