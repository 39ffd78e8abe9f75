import { readdir, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/**
 * Where this process begins what is to stand at a place: beside it, under a name that nothing
 * reads. Clears away what a process that was killed had begun for the same place.
 */
export async function begunBeside(place: string): Promise<string> {
	const [folder, name] = [dirname(place), basename(place)];
	for (const other of await readdir(folder)) {
		const [, writer] = /\.(\d+)\.part$/.exec(other) ?? [];
		if (writer && other === begunName(name, writer) && !isRunning(Number(writer)))
			await rm(join(folder, other), { recursive: true, force: true });
	}
	return join(folder, begunName(name, process.pid));
}

const begunName = (name: string, process: number | string) => `.${name}.${process}.part`;

function isRunning(process_: number): boolean {
	try {
		return process.kill(process_, 0);
	} catch (error) {
		return (error as NodeJS.ErrnoException).code === "EPERM";
	}
}
