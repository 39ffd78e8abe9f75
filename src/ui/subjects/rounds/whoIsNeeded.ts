import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { counted, listed } from "../../format/counted.ts";
import type { ShownRound, ShownStep } from "./dayRounds.ts";
import { roundSpan } from "./roundClock.ts";

/** Who is needed when in a round, in a sentence: "Morning: 1 person 07:00–07:38 and 07:58–08:07; hands free …". */
export function whoIsNeeded({ name, steps, waitsFor }: ShownRound, day: IsoDate): string {
	if (steps.length === 0) return say`${name} has no times yet. ${waitsFor}`;
	const people = Math.max(...steps.map((step) => step.people));
	const busy = listed(spans(steps, (step) => step.people > 0, day));
	const free = listed(spans(steps, (step) => step.people === 0, day));
	if (busy === "") return say`${name}: nobody is needed.`;
	const who = counted(people, "person");
	return free === ""
		? say`${name}: ${who} ${busy}.`
		: say`${name}: ${who} ${busy}; nobody busy ${free}.`;
}

/** Steps that follow each other, as one span of time. */
function spans(
	steps: readonly ShownStep[],
	wanted: (step: ShownStep) => boolean,
	day: IsoDate,
): string[] {
	const found: { from: number; to: number }[] = [];
	for (const step of steps) {
		if (!wanted(step) || step.endsAt === step.startsAt) continue;
		const last = found.at(-1);
		if (last?.to === step.startsAt) last.to = step.endsAt;
		else found.push({ from: step.startsAt, to: step.endsAt });
	}
	return found.map(({ from, to }) => roundSpan(from, to, day));
}
