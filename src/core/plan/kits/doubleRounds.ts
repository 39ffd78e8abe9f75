import { type Problem, problem } from "../../problem.ts";
import { say } from "../../say.ts";
import { roundsDoneSheet } from "../../sheets/roundsDone.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";
import { dayNumber } from "../../values/date.ts";
import type { RoundOfRecord } from "./kitRecord.ts";

interface Span {
	readonly round: RoundOfRecord;
	/** Minutes on one line of time, over midnight too. */
	readonly from: number;
	readonly to: number;
}

/** A kit that is in two rounds at once, said at the later of the two. */
export function doubleRounds(rounds: readonly RoundOfRecord[]): Problem[] {
	const last = new Map<string, Span>();
	return rounds
		.map((round): Span => {
			const midnight = (dayNumber(round.row.value.date) ?? 0) * MINUTES_PER_DAY;
			return { round, from: midnight + round.row.value.start, to: midnight + round.endsAt };
		})
		.sort((a, b) => a.from - b.from)
		.flatMap((span) => {
			const found = span.round.kits.flatMap((kit) => {
				const before = last.get(kit);
				return before && before.to > span.from ? [inTwo(kit, span.round, before.round)] : [];
			});
			for (const kit of span.round.kits) last.set(kit, span);
			return found;
		});
}

function inTwo(kit: string, { row }: RoundOfRecord, before: RoundOfRecord): Problem {
	const other = before.row.value;
	const said = `${other.date} ${writeClock(other.start)}`;
	return problem(
		{ file: roundsDoneSheet.file, line: row.line, column: "kits" },
		{
			code: "kit-in-two-rounds",
			received: kit,
			allowed: say`kits that are in no other round at that time`,
			message: say`Kit ${kit} is in this round and still in the round of ${said}; correct the times or the kits of one of them.`,
		},
	);
}
