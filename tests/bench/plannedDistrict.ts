import { spawnSync } from "node:child_process";
import { join } from "node:path";
import type { Measured } from "./measure.ts";

const COMMAND = join(import.meta.dirname, "../../src/cli/unitsCommand.ts");
/** A first day of the units' plans, so that no lot is of a day to come. */
const TODAY = "2027-03-01";

interface Asked {
	readonly what: string;
	readonly folder: string;
	readonly units: number;
	readonly workers: number;
	readonly out: string;
}

/**
 * Plans a folder's units by the command, in a process of its own. What GNU time would say is
 * asked of that process itself; its memory is the largest resident size with all its workers.
 */
export function plannedDistrict({
	what,
	folder,
	units,
	workers,
	out,
}: Asked): Measured & { heapMb: number } {
	const args = [folder, "--out", out, "--workers", String(workers)];
	const program = `
		import { unitsCommand } from ${JSON.stringify(COMMAND)};
		const status = await unitsCommand(${JSON.stringify(args)}, { log() {}, error() {} }, ${JSON.stringify(TODAY)});
		const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
		console.log(JSON.stringify({ status, cpuMs: (userCPUTime + systemCPUTime) / 1000, mb: maxRSS / 1000 }));`;
	const began = performance.now();
	const { stdout, stderr } = spawnSync(process.execPath, ["--eval", program], {
		encoding: "utf8",
	});
	const ms = performance.now() - began;
	const { status, cpuMs, mb } = JSON.parse(stdout || "{}") as {
		status?: number;
		cpuMs: number;
		mb: number;
	};
	if (status !== 0) throw new Error(stderr);
	const each = (units * 1000) / ms;
	return {
		what: `${what}, ${workers} workers: ${each.toFixed(0)} units a second, ${(cpuMs / units).toFixed(1)} ms of a core each`,
		ms,
		quickestMs: ms,
		runs: 1,
		heapMb: mb,
	};
}
