type AreEnough = (kits: number) => boolean;

/** How many needs find no kit with so many. */
type Unmet = (kits: number) => number;

/**
 * The fewest kits with which no more is unmet than is allowed, where more of them never leave
 * more unmet; more than `most` where none is.
 *
 * What is unmet shrinks nearly by the same factor with each kit, so where it passes the limit
 * can be guessed; every other time it is halved, so that a bad guess costs little. Hundreds of
 * kits whose rounds are nearly full take long each.
 */
export function fewestEnough(most: number, allowed: number, unmet: Unmet): number {
	const tried = (kits: number) => ({ kits, unmet: unmet(kits) });
	let few = tried(0);
	let enough = tried(1);
	while (enough.unmet > allowed) {
		if (enough.kits > most) return enough.kits;
		few = enough;
		enough = tried(2 * enough.kits);
	}
	for (let guesses = true; enough.kits - few.kits > 1; guesses = !guesses) {
		const width = enough.kits - few.kits;
		const part = guesses
			? Math.log(few.unmet / allowed) / Math.log(few.unmet / enough.unmet)
			: 1 / 2;
		const next = tried(few.kits + Math.min(width - 1, Math.max(1, Math.round(part * width))));
		if (next.unmet <= allowed) enough = next;
		else few = next;
	}
	return enough.kits;
}

/** So many numbers of kits are looked at one by one; of more, some are passed over at first. */
const ONE_BY_ONE = 10;
/** How much more is looked at each time then. */
const PASSED_OVER = 1.5;

/**
 * The first number of kits from `least` on that is enough, although more may not be: kits
 * that go out of date together take places in rounds. Beyond ten more than `least` it is a
 * number that is enough while one fewer is not; more than `most` where none that was looked
 * at is enough.
 */
export function firstEnough(least: number, most: number, areEnough: AreEnough): number {
	let tooFew = least - 1;
	for (let kits = least; kits <= most; ) {
		if (areEnough(kits)) return between(tooFew, kits, areEnough);
		tooFew = kits;
		const next = kits - least < ONE_BY_ONE ? kits + 1 : Math.ceil(kits * PASSED_OVER);
		kits = kits < most ? Math.min(most, next) : most + 1;
	}
	return most + 1;
}

function between(tooFewKits: number, enoughKits: number, areEnough: AreEnough): number {
	let [tooFew, enough] = [tooFewKits, enoughKits];
	while (enough - tooFew > 1) {
		const middle = (tooFew + enough) >> 1;
		if (areEnough(middle)) enough = middle;
		else tooFew = middle;
	}
	return enough;
}
