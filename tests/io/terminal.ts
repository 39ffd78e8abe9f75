import { spawnSync } from "node:child_process";
import type { Command } from "../../src/cli/command.ts";

/** What a program ended with and the lines it wrote. */
interface Ended {
	readonly status: number | null;
	readonly stdout: string;
	readonly stderr: string;
}

const line = (words: readonly unknown[]) => `${words.map(String).join(" ")}\n`;

/** Runs a command here, without the start of a program for each test, and without a clock unless told the day. */
export async function terminal(command: Command, given: string[], today?: string): Promise<Ended> {
	let stdout = "";
	let stderr = "";
	const lines = {
		log: (...words: unknown[]) => {
			stdout += line(words);
		},
		error: (...words: unknown[]) => {
			stderr += line(words);
		},
	};
	const status = await command(given, lines, today);
	return { status, stdout, stderr };
}

/** Starts a program of src/cli as a person does, which takes an old computer a while. */
export function started(name: string, given: string[]): Ended {
	return spawnSync("node_modules/.bin/node", [`src/cli/${name}.ts`, ...given], {
		encoding: "utf8",
	});
}
