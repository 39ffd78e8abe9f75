import Tinypool from "tinypool";
import type { District, UnitsTask } from "./district.ts";
import { failed } from "./failed.ts";
import { sideBySide } from "./sideBySide.ts";
import type { UnitDone } from "./unitDone.ts";

const WORKER = new URL("./planUnits.ts", import.meta.url).href;
/** So many tasks wait for each worker, so that none waits for a task. */
const TASKS_PER_WORKER = 3;
/** A plan makes much that is let go at once: swept in larger portions that is cheaper. */
const YOUNG_MB = 64;
/** More than any unit within the limits needs. With a limit, a worker tidies up before it has taken all that the machine would give. */
const OLD_MB = 1024;

/**
 * Plans the units of tasks by a pool of workers that are kept, and gives them in the order
 * of the tasks. A unit whose worker ends with it is tried alone, and then has its row.
 *
 * @param stopped ends the workers at once; what was not given by then is lost
 * @param worker the module that plans; another one in tests alone
 */
export async function* plannedUnits(
	district: District,
	tasks: AsyncIterable<UnitsTask>,
	workers: number,
	stopped: AbortSignal,
	worker = WORKER,
): AsyncGenerator<UnitDone[]> {
	const pool = new Tinypool({
		filename: worker,
		runtime: "worker_threads",
		minThreads: workers,
		maxThreads: workers,
		isolateWorkers: false,
		workerData: district,
		resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB, maxOldGenerationSizeMb: OLD_MB },
	});
	const run = async (task: UnitsTask): Promise<UnitDone[]> => {
		try {
			return await pool.run(task, { signal: stopped });
		} catch (trouble) {
			if (stopped.aborted) return [];
			const [path = "", ...more] = task.paths;
			if (more.length === 0) return [failed(path, trouble)];
			const alone: UnitDone[] = [];
			for (const one of task.paths) alone.push(...(await run({ ...task, paths: [one] })));
			return alone;
		}
	};
	try {
		for await (const done of sideBySide(tasks, run, workers * TASKS_PER_WORKER)) {
			if (stopped.aborted) return;
			yield done;
		}
	} finally {
		await pool.destroy();
	}
}
