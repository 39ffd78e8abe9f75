import type { Customs, Question } from "../../../core/read/block/blockTable.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { nextTurn } from "../../dom/nextTurn.ts";
import { District } from "./district.ts";
import { readUnit } from "./readUnit.ts";

/** What is asked of a person, and what they answered; undefined: nothing. */
export type Asking = (question: Question) => Promise<Customs | undefined>;

/** How far a reading has come. */
export interface Come {
	readonly read: number;
	/** Those read, and those that still wait. */
	readonly all: number;
	/** Since it began. */
	readonly ms: number;
}

/** The page that shows it. */
interface Watcher {
	went(come: Come): void;
	ended(come: Come): void;
}

/**
 * A district, and the reading of what was given for it: a unit at a time, with a turn for the
 * page after each and within each, until all are read or somebody stops it. What is left waits
 * on. It goes on while the person looks at other pages.
 */
export class DistrictReading {
	readonly #asked: Asking;
	#district = new District();
	#watcher: Watcher | undefined;
	#isBack: () => void = () => undefined;
	#stopping: AbortController | undefined;
	#come: Come = { read: 0, all: 0, ms: 0 };

	constructor(asked: Asking) {
		this.#asked = asked;
	}

	get district(): District {
		return this.#district;
	}

	get isGoing(): boolean {
		return this.#stopping !== undefined;
	}

	/** How far it has come; of the last one where none goes on. */
	get come(): Come {
		return this.#come;
	}

	/** A page begins to show it. @returns what ends that */
	watch(watcher: Watcher): () => void {
		this.#watcher = watcher;
		this.#isBack();
		return () => {
			if (this.#watcher === watcher) this.#watcher = undefined;
		};
	}

	/** Reads and plans what waits; what is received meanwhile too. */
	async read(today: IsoDate | undefined): Promise<void> {
		if (this.isGoing) return;
		const stopping = new AbortController();
		this.#stopping = stopping;
		try {
			await this.#readAll(today, stopping.signal);
		} finally {
			this.#stopping = undefined;
			this.#watcher?.ended(this.#come);
		}
	}

	stop(): void {
		this.#stopping?.abort();
	}

	startAgain(): void {
		this.#district = new District();
	}

	async #readAll(today: IsoDate | undefined, stopped: AbortSignal): Promise<void> {
		const { district } = this;
		const asked = answersOnce(async (question) => {
			await this.#lookedAt();
			return this.#asked(question);
		});
		const began = performance.now();
		for (let read = 0; ; read++) {
			this.#come = { read, all: read + district.waiting, ms: performance.now() - began };
			this.#watcher?.went(this.#come);
			await nextTurn();
			const next = stopped.aborted ? undefined : district.next();
			if (!next) return;
			district.add(await readUnit(next, today, asked));
		}
	}

	/** Over another page nobody would know what a question is about: it waits until the person is back. */
	async #lookedAt(): Promise<void> {
		if (this.#watcher) return;
		await new Promise<void>((back) => {
			this.#isBack = back;
		});
	}
}

/** What a person answered holds for the orders after it too. */
function answersOnce(asked: Asking): Asking {
	let answers: Customs = {};
	return async (question) => {
		const before = answers[question.about];
		if (before !== undefined) return { [question.about]: before };
		const answer = await asked(question);
		answers = { ...answers, ...answer };
		return answer;
	};
}
