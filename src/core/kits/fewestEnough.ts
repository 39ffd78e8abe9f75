type AreEnough = (kits: number) => boolean;

/** The fewest kits that are enough, where more always are too; more than `most` where none is. */
export function fewestEnough(most: number, areEnough: AreEnough): number {
	let tooFew = 0;
	let enough = 1;
	while (!areEnough(enough)) {
		if (enough > most) return enough;
		tooFew = enough;
		enough *= 2;
	}
	return between(tooFew, enough, areEnough);
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
