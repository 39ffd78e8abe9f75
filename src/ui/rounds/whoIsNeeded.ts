import type { IsoDate } from "../../core/values/date.ts";
import type { ShownRound, ShownStep } from "./dayRounds.ts";
import { roundSpan } from "./roundClock.ts";

/** Who is needed when in a round, in a sentence: "Morning: 1 person 07:00–07:38 and 07:58–08:07; hands free …". */
export function whoIsNeeded({ name, steps, waitsFor }: ShownRound, day: IsoDate): string {
	if (steps.length === 0) return `${name} has no times yet. ${waitsFor}`;
	const people = Math.max(...steps.map((step) => step.people));
	const busy = spans(steps, (step) => step.people > 0, day);
	const free = spans(steps, (step) => step.people === 0, day);
	const who = people === 1 ? "1 person" : `${people} people`;
	return `${name}: ${who} ${inWords(busy)}${free.length > 0 ? `; hands free ${inWords(free)}` : ""}.`;
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

function inWords(spans: readonly string[]): string {
	return spans.length < 2 ? spans.join("") : `${spans.slice(0, -1).join(", ")} and ${spans.at(-1)}`;
}
