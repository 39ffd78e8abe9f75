import { Worker } from "node:worker_threads";
import type { Question } from "./worker.ts";

/** After so many answers a worker makes room for a new one, whose memory is clean. */
const BATCH = 3000;

/** A worker that answers one question after the other. */
export class Helper {
	#worker = started();
	#answers = 0;

	/**
	 * @param longestMs for an answer; without it, as long as it takes
	 * @returns "never ends" where it took longer, or all memory there is
	 * @throws Error where the worker fails
	 */
	async ask<Answer>(
		question: Question,
		longestMs = Number.POSITIVE_INFINITY,
	): Promise<Answer | "never ends"> {
		const answer = await this.#answer<Answer>(question, longestMs);
		if (answer === "never ends" || ++this.#answers % BATCH === 0) {
			await this.end();
			this.#worker = started();
		}
		return answer;
	}

	#answer<Answer>(question: Question, longestMs: number): Promise<Answer | "never ends"> {
		return new Promise((resolve, reject) => {
			const clock =
				longestMs < Number.POSITIVE_INFINITY
					? setTimeout(() => resolve("never ends"), longestMs)
					: undefined;
			this.#worker.removeAllListeners();
			this.#worker.once("error", (error: NodeJS.ErrnoException) => {
				clearTimeout(clock);
				if (error.code === "ERR_WORKER_OUT_OF_MEMORY") resolve("never ends");
				else reject(error);
			});
			this.#worker.once("message", (answer: Answer) => {
				clearTimeout(clock);
				resolve(answer);
			});
			this.#worker.postMessage(question);
		});
	}

	end(): Promise<number> {
		return this.#worker.terminate();
	}
}

function started(): Worker {
	return new Worker(new URL("./worker.ts", import.meta.url));
}
